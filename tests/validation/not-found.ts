/**
 * Models for which no published experiment with its conditions was found. The stand plan and the coupons list the measurements that would be the first.
 */
export const NOT_FOUND: readonly string[] = [
  'Stiffness, windup and slip torque of a cord drive whose cord, drums and pretension are stated: the one open record (F. Alonso, 2026) states none of them, so that only the growth of its windup is judged. Its drift in an hour at rest under load was at most 0.1 deg, three times.',
  'Pretension of a cord drive that shifts as the joint moves to and fro under load.',
  'Heating of a motor held at stall, by the angle of its rotor.',
  'Windup of a knee that a rod drives from the hip.',
  'A thread stripped in a print, with its engagement: printed M8 threads in sintered PA12 held 3.41 kN and heat-set inserts 3.83 kN (Śliwka & Wójcik 2025, Polymers 18:112, abstract), but their length is not in what could be read.',
  'A press fit pulled out of a print, with its interference, at once and after weeks.',
  'Relaxation of a bolted print over weeks: the published tests state the plastic bolt, not the clamped print.',
  'Creep of a print for weeks: the curves of PETG for 5 and 20 h (Polymers 2025, 17:2075) and of PLA (arXiv 2302.11240) could be read in their abstracts only.',
  'Rupture of a print under a load that stays: no time to failure of a print was found.',
]
