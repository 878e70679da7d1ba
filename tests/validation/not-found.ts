/** Models for which no published experiment with its conditions was found. The plan for the test stand lists the measurements that would be the first. */
export const NOT_FOUND: readonly string[] = [
  'Stiffness, windup and slip torque of a cord drive: one hour on a stand with two weights and a camera would be the first such record.',
  'Pretension of a cord drive that shifts as the joint moves to and fro under load.',
  'Heating of a motor held at stall, by the angle of its rotor.',
  'Windup of a knee that a rod drives from the hip.',
]
