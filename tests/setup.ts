// One seed for every property test, so that a failure on one machine is the same failure on every other.
// LIMBWRIGHT_SEED=random draws one (it is printed with a failure), a number repeats one.
import fc from 'fast-check'

const given = process.env.LIMBWRIGHT_SEED
if (given !== 'random') fc.configureGlobal({ seed: given === undefined ? 20_260_101 : Number(given) })
