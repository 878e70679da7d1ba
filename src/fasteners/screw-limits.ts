/** Limit for a head or nut that is turned on a hole: its bearing ring needs a width. */
export const WIDER_THAN_HOLE = {
  accepts: 'must be larger than the hole',
  holds: ({ bearingDiameter, holeDiameter }: { readonly bearingDiameter: number; readonly holeDiameter: number }) =>
    bearingDiameter > holeDiameter,
}

const COS_30 = Math.sqrt(3) / 2

/** Whether a metric thread turns at all against so much friction: beyond that, its equation has the wrong sign. */
export const turnsAgainst = (threadFriction: number, lead: number, meanDiameter: number) =>
  threadFriction * lead < Math.PI * meanDiameter * COS_30

/** `turnsAgainst` as a limit of a formula that takes a thread. */
export const LETS_SCREW_TURN = {
  accepts: 'must let the screw turn: friction × pitch must stay below π × pitch diameter × cos 30°',
  holds: ({
    threadFriction,
    thread,
  }: {
    readonly threadFriction: number
    readonly thread: { readonly pitch: number; readonly pitchDiameter: number }
  }) => turnsAgainst(threadFriction, thread.pitch, thread.pitchDiameter),
}
