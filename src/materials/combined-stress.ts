import { formula } from '../formula/index.js'

/**
 * One stress that is equivalent to tension or bending together with shear, to compare with the strength in the direction of the tension.
 *
 * For a print lying flat the strength is that along the layers, for one standing upright that across them; the shear strength is that between layers in both.
 * A metal has 0.577 of its yield strength in shear, and the result is then the stress of von Mises.
 */
export const combinedStress = /* @__PURE__ */ formula('materials.combinedStress', {
  inputs: {
    /** Normal stress: of bending and tension together. */
    normalStress: { kind: 'stress', min: 0 },
    /** Shear stress at the same place, or the largest of the section. */
    shearStress: { kind: 'stress', min: 0 },
    /** Strength in the direction of the normal stress. */
    strength: { kind: 'stress', above: 0 },
    /** Shear strength of the weakest plane: between layers of a print. */
    shearStrength: { kind: 'stress', above: 0 },
  },
  /** Normal stress that is as near to failure. */
  output: 'stress',
  equation: ['result = sqrt(normalStress^2 + (strength / shearStrength * shearStress)^2)'],
  assumes: [
    'one normal stress, as in a beam: none across it',
    'the layers may lie so that the shear acts between them: safe where it acts within them',
    'compression as dangerous as tension: safe for polymers',
  ],
  source: [
    {
      level: 'published',
      where: 'Tsai-Hill criterion in plane stress without a second normal stress: (σ/X)² + (τ/S)² = 1 (Hill 1948; Azzi & Tsai 1965)',
    },
    { level: 'published', where: 'von Mises for S = X/√3: √(σ² + 3 τ²), any machine-design text' },
  ],
  si: ({ normalStress, shearStress, strength, shearStrength }) => Math.hypot(normalStress, (strength / shearStrength) * shearStress),
})
