import { testExamples } from './test-examples.js'

testExamples('of the leg')
