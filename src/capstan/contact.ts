/** Response of one arc, SI numbers: cord given out at the tangent point and its change with the span tension. */
export interface ArcResponse {
  readonly feed: number
  readonly compliance: number
  readonly slipArc: number
}

/**
 * An arc whose cord sticks elastically (stiffness `k` per length) and slips where the traction exceeds friction, anchored at its end:
 * shear-lag in the resting part, Coulomb in the slipping part. SI numbers.
 *
 * The boundary lies where the traction of the resting part, (T_b − T0) tanh(ℓ/λ)/λ, equals μ T_b/R; it is found by bisection on the slip
 * arc. The displacement at an anchor is zero, so slip never reaches it.
 */
export function elasticArc(T: number, T0: number, mu: number, R: number, wrap: number, EA: number, k: number): ArcResponse {
  const lambda = Math.sqrt(EA / k)
  const sign = T >= T0 ? 1 : -1
  const tanhOf = (phi: number) => Math.tanh((R * (wrap - phi)) / lambda)
  const limit = (Tb: number) => (mu * Tb) / R
  const traction = (Tb: number, phi: number) => (Math.abs(Tb - T0) * tanhOf(phi)) / lambda
  const linear = (lambda * tanhOf(0)) / EA
  if (traction(T, 0) <= limit(T)) return { feed: (T - T0) * linear, compliance: linear, slipArc: 0 }
  const at = (phi: number) => T * Math.exp(-sign * mu * phi)
  let lo = 0
  let hi = wrap
  for (let i = 0; i < 200 && hi - lo > 1e-15 * wrap; i++) {
    const mid = 0.5 * (lo + hi)
    // Past the boundary the tension has passed the stored one or the traction is below its limit.
    if (sign * (at(mid) - T0) > 0 && traction(at(mid), mid) > limit(at(mid))) lo = mid
    else hi = mid
  }
  const phi = 0.5 * (lo + hi)
  const Tb = at(phi)
  const slipping = mu > 0 ? Math.abs(T - Tb) / mu : T * phi
  const th = tanhOf(phi)
  const feed = (R / EA) * (slipping - T0 * phi) + ((Tb - T0) * lambda * th) / EA
  return { feed, compliance: complianceOf({ T, T0, Tb, phi, mu, R, EA, lambda, th, sign }), slipArc: phi }
}

/** An arc with its slip boundary found: tensions at the tangent point, stored and at the boundary; `th` is tanh of the resting length over λ. */
interface Slipping {
  readonly T: number
  readonly T0: number
  readonly Tb: number
  readonly phi: number
  readonly mu: number
  readonly R: number
  readonly EA: number
  readonly lambda: number
  readonly th: number
  readonly sign: number
}

/** d(feed)/dT while the boundary moves as its condition demands. */
function complianceOf({ T, T0, Tb, phi, mu, R, EA, lambda, th, sign }: Slipping): number {
  // Condition G(φ, T) = sign (Tb − T0) tanh − μ λ Tb / R = 0 with Tb = T e^(−sign μ φ), tanh = tanh(R(Θ − φ)/λ).
  const decay = Tb / T
  const tbByPhi = -sign * mu * Tb
  const thByPhi = (-R / lambda) * (1 - th * th)
  const gByT = sign * decay * th - (mu * lambda * decay) / R
  const gByPhi = sign * (tbByPhi * th + (Tb - T0) * thByPhi) - (mu * lambda * tbByPhi) / R
  const phiByT = -gByT / gByPhi
  const tbByT = decay + tbByPhi * phiByT
  const slippingByT = mu > 0 ? (sign * (1 - tbByT)) / mu : phi + T * phiByT
  return (R / EA) * (slippingByT - T0 * phiByT) + (lambda / EA) * (tbByT * th + (Tb - T0) * thByPhi * phiByT)
}
