import type { In, Note } from '../units/index.js'

/** Heat released in a node: a power, a law of its own temperature (kelvin to watts), or a law of several nodes' temperatures. */
export type Loss =
  | In<'power'>
  | ((temperature: number) => number)
  | {
      /** Nodes whose temperatures the law takes, in its order. */
      readonly on: readonly string[]
      /** Watts from those temperatures in kelvin. */
      readonly watts: (...temperatures: number[]) => number
      /** Remarks at those temperatures, such as a range that was left: they reach every result. */
      readonly notes?: (...temperatures: number[]) => readonly Note[]
    }

/** Relative half-width of a 95 % band; or one for each cause by name: links that name the same cause lie off together. */
export type Scatter = In<'ratio'> | Readonly<Record<string, In<'ratio'>>>

/** One part of a network that has one temperature. */
export interface NetworkNode {
  /** Heat capacity. In a transient a node without one follows its neighbours at once, with a note; a duty needs that of every node. */
  readonly capacity?: In<'heatCapacity'> | undefined
  /** Relative half-width of the 95 % band of the heat capacity. Default 0. */
  readonly capacityScatter?: In<'ratio'> | undefined
  /** Heat released in it. */
  readonly loss?: Loss | undefined
  /** Relative half-width of the 95 % band of that heat. Default 0. */
  readonly lossScatter?: In<'ratio'> | undefined
  /** A node held at this temperature, such as the air. It takes any heat and has neither loss nor capacity. */
  readonly fixed?: In<'temperature'> | undefined
}

/** A way for heat between two nodes. Give a conductance or a resistance. */
export interface NetworkLink {
  /** Name of the node at its first end. */
  readonly from: string
  /** Name of the node at its second end. */
  readonly to: string
  /** Conductance, or a function of the two temperatures in kelvin (as named by `from` and `to`) that gives watts per kelvin. */
  readonly conductance?: In<'thermalConductance'> | ((from: number, to: number) => number) | undefined
  /** Resistance. */
  readonly resistance?: In<'thermalResistance'> | undefined
  /** Relative uncertainty of the conductance, such as that of a correlation or a joint. Default 0. */
  readonly scatter?: Scatter | undefined
  /** Remarks at two temperatures, such as a correlation outside its range: they reach every result. */
  readonly notes?: ((from: number, to: number) => readonly Note[]) | undefined
  /** A name to speak of it by, in calibration; default `from-to`. */
  readonly name?: string | undefined
}
