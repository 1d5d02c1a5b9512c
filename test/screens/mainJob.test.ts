import { afterAll, beforeAll, beforeEach, expect, onTestFailed, test } from 'vitest'
import { agreeingSteps } from './mainJob/agreeingItems.ts'
import { bookSteps } from './mainJob/book.ts'
import { beginEvening, complaints, endEvening } from './mainJob/evening.ts'
import { invitingSteps } from './mainJob/inviting.ts'
import { layingOutSteps } from './mainJob/layingOut.ts'
import { notebookFileSteps } from './mainJob/notebookFile.ts'
import { settlingSteps } from './mainJob/settling.ts'
import { sharingSteps } from './mainJob/sharing.ts'
import { signedSummarySteps } from './mainJob/signedSummary.ts'
import { signingSteps } from './mainJob/signing.ts'
import { startingSteps } from './mainJob/starting.ts'

// One evening at the kitchen table and the days after it, from the empty install to the last payment: household a at a laptop,
// household b at a phone. Each test goes on where the one before it stopped.

beforeAll(beginEvening)
afterAll(endEvening)

// What an earlier step left undone can only fail: said at once, instead of after a wait at every later step.
let failedStep: string | undefined
beforeEach(({ task }) => {
  if (failedStep !== undefined) throw new Error(`An earlier step failed: ${failedStep}`)
  onTestFailed(() => {
    failedStep ??= task.name
  })
})

startingSteps()
invitingSteps()
layingOutSteps()
sharingSteps()
settlingSteps()
agreeingSteps()
signingSteps()
signedSummarySteps()
bookSteps()
notebookFileSteps()

test('all the while neither browser had anything to complain about', () => {
  expect(complaints).toEqual([])
})
