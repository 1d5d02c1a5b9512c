import { describe, expect, test } from 'vitest'
import { database } from '../../lib/store/database.ts'
import { answerFirst, newestFirstAnswer } from '../../lib/store/firstAnswers.ts'
import { messagesOf } from '../../lib/store/messages.ts'
import { createNotebook, findNotebook } from '../../lib/store/notebooks.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2027-03-03T10:00:00Z')
const stays = (document: string) => ({ document, changed: [], kept: 'written' as const })

async function aNotebook(): Promise<string> {
  return (await createNotebook({ document: '{}', example: false, at })).id
}

describe('an answer', () => {
  test('is the newest that stands, and none stands before the first', async () => {
    const notebookId = await aNotebook()
    expect(await newestFirstAnswer(notebookId)).toBeUndefined()
    const given = (answer: 'no' | 'fine', text: string) =>
      answerFirst({ notebookId, answer: { household: 'b', answer, text, at }, change: stays })
    expect(await given('no', 'Not with us.')).toBe('written')
    expect(await given('fine', '')).toBe('written')
    expect(await newestFirstAnswer(notebookId)).toEqual({ household: 'b', answer: 'fine', text: '', at })
  })

  test('stands with its edit, its message and its entry of the history', async () => {
    const notebookId = await aNotebook()
    const answer = { household: 'b', answer: 'not now', text: 'Busy', until: '2027-09-01', at } as const
    const change = () => ({ document: '{"dates":[]}', changed: [], kept: 'written' as const })
    await answerFirst({ notebookId, answer, asksBeside: 'line', change })
    expect(await newestFirstAnswer(notebookId)).toEqual(answer)
    expect((await findNotebook(notebookId))?.document).toBe('{"dates":[]}')
    expect(await messagesOf(notebookId)).toMatchObject([
      { itemKey: 'line', household: 'b', text: 'Busy', at },
    ])
    const changes = await database().read((tables) => tables.change.findMany({ where: { notebookId } }))
    expect(changes.map(({ kind, detail }) => [kind, JSON.parse(detail ?? '')])).toEqual([
      ['first answer', { answer: 'not now', text: 'Busy', until: '2027-09-01' }],
      ['message', { message: 1, kind: 'remark', text: 'Busy' }],
    ])
  })

  test('is not given where its edit is refused, or breaks', async () => {
    const notebookId = await aNotebook()
    const answer = { household: 'b', answer: 'no', text: '', at } as const
    const refusing = () => ({ refused: { refused: 'closed' } })
    expect(await answerFirst({ notebookId, answer, asksBeside: 'line', change: refusing })).toEqual({
      refused: 'closed',
    })
    const breaking = () => {
      throw new Error('broke')
    }
    await expect(answerFirst({ notebookId, answer, change: breaking })).rejects.toThrow('broke')
    expect(await newestFirstAnswer(notebookId)).toBeUndefined()
    expect(await messagesOf(notebookId)).toEqual([])
  })

  test('on record is never altered and never deleted', async () => {
    const notebookId = await aNotebook()
    await answerFirst({ notebookId, answer: { household: 'b', answer: 'no', text: '', at }, change: stays })
    const where = { notebookId }
    const alter = database().write((tables) =>
      tables.firstAnswer.updateMany({ where, data: { text: 'yes' } }),
    )
    await expect(alter).rejects.toThrow()
    await expect(database().write((tables) => tables.firstAnswer.deleteMany({ where }))).rejects.toThrow()
    expect(await newestFirstAnswer(notebookId)).toMatchObject({ answer: 'no', text: '' })
  })

  test('that no household may give is refused by the database itself', async () => {
    const notebookId = await aNotebook()
    const data = { notebookId, household: 'b', answer: 'maybe', text: '', at }
    await expect(database().write((tables) => tables.firstAnswer.create({ data }))).rejects.toThrow()
  })
})
