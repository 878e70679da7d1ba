import { formula, property } from '../formula/index.js'
import { BOLT_COMPLIANCE, MEMBER_COMPLIANCE } from './bolt-inputs.js'

/**
 * Flattening of one face or thread soon after tightening, by material. Add the values of a joint for `embeddingLoss`: two metal faces and a
 * thread are about 8 µm, and each face with a print on it may add as much again.
 */
export const faceEmbeddings = {
  /** Engaged thread of metal in metal. */
  metalThread: /* @__PURE__ */ property('length', {
    typical: '3 um',
    low: '2 um',
    high: '4 um',
    source: { level: 'unverified', where: 'VDI 2230-1, table of embedding guide values' },
    conditions: 'axial load, mean peak-to-valley height up to 40 µm',
  }),
  /** Metal on metal: head, nut or washer on its face, or two parts on each other. */
  metalFace: /* @__PURE__ */ property('length', {
    typical: '2.5 um',
    low: '1.5 um',
    high: '4.5 um',
    source: { level: 'unverified', where: 'VDI 2230-1, table of embedding guide values: smooth axially loaded to rough sheared faces' },
    conditions: 'machined faces, mean peak-to-valley height up to 40 µm',
  }),
  /** A face with a print on at least one side. */
  printedFace: /* @__PURE__ */ property('length', {
    typical: '10 um',
    low: '3 um',
    high: '25 um',
    source: {
      level: 'assumption',
      where: 'a tenth of the ridges of a printed face, whose layers are 0.1 to 0.3 mm; sanded faces are at the low end',
    },
    conditions: 'flat printed face below its yield pressure',
  }),
}

/** Clamp load lost when faces and threads flatten after tightening: short stiff joints lose most. */
export const embeddingLoss = /* @__PURE__ */ formula('fasteners.embeddingLoss', {
  title: 'clamp load lost by embedding',
  inputs: {
    /** Flattening of all faces and threads together (`faceEmbeddings`). */
    embedding: { kind: 'length', min: 0 },
    ...BOLT_COMPLIANCE,
    ...MEMBER_COMPLIANCE,
  },
  /** Clamp load lost; more than the clamp load where the joint comes loose. */
  output: 'force',
  equation: ['result = embedding / (boltCompliance + memberCompliance)'],
  assumes: ['elastic bolt and parts'],
  source: [{ level: 'unverified', where: 'VDI 2230-1, section 5.4.2.1' }],
  si: ({ embedding, boltCompliance, memberCompliance }) => embedding / (boltCompliance + memberCompliance),
})
