import type { ArcResponse } from './contact.js'

/** ∫ e^(ms) (e^s − 1) ds from 0 to y, exact also for small y where its two parts cancel. */
function excessOf(m: number, y: number): number {
  if (y > -1e-2 && y < 1e-2) {
    let [sum, power, above, below] = [0, y, 1, 1]
    for (let k = 2; k <= 8; k++) {
      power *= y / k
      above *= 1 + m
      below *= m
      sum += power * (above - below)
    }
    return sum
  }
  return Math.expm1((1 + m) * y) / (1 + m) - Math.expm1(m * y) / m
}

/**
 * An arc whose friction falls with pressure, dT/dθ = ∓μ T0 (T/T0)^n with n below 1 and μ the coefficient at the stored tension T0. SI numbers.
 * T^(1−n) is linear along the slip arc, so that its end, the cord given out and the compliance are closed forms.
 */
export function fibreArc(T: number, T0: number, mu: number, R: number, wrap: number, EA: number, n: number): ArcResponse {
  const m = 1 - n
  const y = Math.log(T / T0)
  if (y === 0) return { feed: 0, compliance: 0, slipArc: 0 }
  const sign = y > 0 ? 1 : -1
  const k = R / EA
  const slip = Math.abs(Math.expm1(m * y)) / (m * mu)
  const within = slip < wrap
  if (within)
    return { feed: (sign * k * T0 * excessOf(m, y)) / mu, compliance: (k * Math.abs(T / T0 - 1)) / (mu * (T / T0) ** n), slipArc: slip }
  // Tension at the anchor, over the stored one.
  const end = (Math.exp(m * y) - sign * m * mu * wrap) ** (1 / m)
  const ratio = T / T0
  const integral = (sign * T0 * (ratio ** (1 + m) - end ** (1 + m))) / ((1 + m) * mu)
  return {
    feed: k * (integral - T0 * wrap),
    compliance: ((sign * k) / mu) * (ratio ** m - end ** m * (end / ratio) ** n),
    slipArc: wrap,
  }
}

/** Tension that a wrap holds at its other end against `taut`, with the same law; 0 where the wrap holds without tension there. */
export function fibreGrip(taut: number, T0: number, mu: number, wrap: number, n: number): number {
  const m = 1 - n
  const left = (taut / T0) ** m - m * mu * wrap
  return left > 0 ? T0 * left ** (1 / m) : 0
}
