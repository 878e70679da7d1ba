export { contradictoryRelations, type UnusualValue, unusualValues } from './unusual.js'
