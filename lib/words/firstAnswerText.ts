import { dayWords } from './day.ts'
import { clipped } from './letter/clipped.ts'
import { hoursInMoneyWords } from './meansText.ts'
import { pressRefusals } from './pressText.ts'
import { capitalised } from './summary/names.ts'

export type FirstAnswerName = 'fine' | 'fine without money' | 'a question' | 'not now' | 'no'

/** What the invited household is given to choose from. */
export const firstAnswerWords: Readonly<Record<FirstAnswerName, string>> = {
  fine: 'Fine',
  'fine without money': 'Fine, but without money',
  'a question': 'A question',
  'not now': 'Not now',
  no: 'No',
}

/** What comes of an answer, told before it is given. `a` is the name of the household that asks. */
export function firstAnswerMeaning(answer: FirstAnswerName, a: string): string {
  switch (answer) {
    case 'fine':
      return 'You go through the items one by one, and mark those that you agree to.'
    case 'fine without money':
      return `You are shown what can stand in the place of money: hours, things that you have, or a limit of nothing. ${a} is told.`
    case 'a question':
      return `${capitalised(a)} reads it at once and can answer here.`
    case 'not now':
      return `You name a day, and ${a} asks again then. Both of you see it among the dates.`
    case 'no':
      return 'Nothing is asked of you. You can change your answer at any time.'
  }
}

/** At the top of the first screen and beside its figure, as the household that looks at it reads it. */
export function nothingBindsWords(reader: 'a' | 'b'): string {
  return reader === 'b' ? 'Nothing binds until you sign.' : 'Nothing binds until all have signed.'
}

/** In the place of the drawing on the first screen while nothing has a place along the line. */
export const firstScreenNothing = 'Nothing is laid out along the line yet.'

/** What the figure of the first screen rests on: a cap that holds or was set, or nothing but the plan of today. */
export type AskedBy = 'cap agreed' | 'own cap' | 'plan'

/** Before and after the figure. Only a cap is a most: what the plan asks becomes more or less with it. */
export function aroundAsked(by: AskedBy): { readonly before: string; readonly after: string } {
  return by === 'plan' ? { before: '', after: 'as the plan stands now' } : { before: 'at most', after: '' }
}

/** Under the title of the first screen. `asked` undefined: nothing is asked yet. */
export function firstScreenLead(
  reader: 'a' | 'b',
  b: string,
  asked: { readonly money: string; readonly by: AskedBy } | undefined,
): string {
  const { before, after } = aroundAsked(asked?.by ?? 'plan')
  const what = asked === undefined ? 'nothing yet' : [before, asked.money, after].filter(Boolean).join(' ')
  return reader === 'b'
    ? `Look at it in your own time. Asked of you: ${what}. ${nothingBindsWords(reader)}`
    : `This page is what ${b} opens first; where it speaks of ${b} here, ${b} reads “you”. Asked of ${b}: ${what}. ${nothingBindsWords(reader)}`
}

/** To the household that asks, in the place of the presses: which answers the other is given to choose from. */
export function answersOfOtherWords(b: string): string {
  const quoted = Object.values(firstAnswerWords).map((words) => `“${words}”`)
  return `${capitalised(b)} answers by one of five presses: ${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}. Each then shows ${b} what it can do next, and you read here which it was.`
}

type Given = {
  readonly answer: FirstAnswerName
  readonly text: string
  readonly until?: string
  readonly at: Date
}

/** "No. 14 answered on 3 March 2027: a question – “Who mends it?”" */
export function firstAnswerLine({ answer, text, until, at }: Given, b: string): string {
  const words = text === '' ? '' : ` – “${clipped(text, 200)}”`
  const again = until === undefined ? '' : `, ask again on ${dayWords(until)}`
  const name = firstAnswerWords[answer]
  return `${capitalised(b)} answered on ${dayWords(at.toISOString().slice(0, 10))}: ${name.charAt(0).toLowerCase()}${name.slice(1)}${again}${words}`
}

/** The same as a sentence: with a stop at its end, unless what was quoted brings its own. */
export function firstAnswerSentence(given: Given, b: string): string {
  const line = firstAnswerLine(given, b)
  return /[.!?…]”$/.test(line) ? line : `${line}.`
}

export const answersStandWords =
  'Nothing binds by an answer, and the newest one stands; a question leaves the answer before it standing. Every answer stays on record.'

/** The words of the date that "not now" puts among the dates. */
export function askAgainWords(b: string): string {
  return `Ask ${clipped(b)} again about the fence`
}

/** What the figure rests on, and whether it can change. `b` is the name of the invited household. */
export function askedRestsOnWords(limit: AskedBy, reader: 'a' | 'b', b: string): string {
  const [limitOf, set, you, marks, sign] =
    reader === 'b'
      ? ['your limit', 'you set', 'you', 'your mark', 'you sign']
      : [`the limit of ${b}`, `${b} set`, b, `the mark of ${b}`, `${b} signs`]
  const goods = `It counts ${reader === 'b' ? 'your' : 'its'} goods and hours too`
  switch (limit) {
    case 'cap agreed':
      return `That is ${limitOf}, which both households have marked. ${goods}.`
    case 'own cap':
      return `That is the limit that ${set}. ${goods}, and holds once both households mark it.`
    case 'plan':
      return `That is what the plan asks of ${you} now, goods and hours counted in money. Until all have signed the plan can change, by what either household enters, and this figure becomes more or less with it. What changes takes ${marks} off, and nothing binds before ${sign}.`
  }
}

/** Why an answer was not taken; names the field and what would be right. */
export const firstAnswerRefusals = {
  notInvited: 'Only the invited household answers; you are in as the first.',
  unknown: pressRefusals.unreadable,
  question: 'Your question: needed, what you want to ask.',
  tooLong: (length: number, most: number) => `Your words: at most ${most} characters; this has ${length}.`,
  about: 'What it is about: this item was removed in the meantime. Choose another, or the whole fence.',
  day: 'The day: needed, when to ask again.',
  noDay: 'The day: this is no day of the calendar. Choose one that is.',
  past: 'The day: it is past. Choose today or a later day.',
  tooFar: (last: string) => `The day: at most two years from now, so ${dayWords(last)} or before.`,
} as const

/** What the figure is made of as the plan stands, for its household to read, or the other. `b` is its name. */
export function ofItWords(
  figures: {
    /** “asked for $3,750.00: of it …” of `meansText.ts`. */
    readonly means: string
    /** In hours, typed out; undefined where no work falls to it and it does none. */
    readonly hours: { readonly share: string; readonly does: string } | undefined
  },
  reader: 'a' | 'b',
  b: string,
): string {
  const { means, hours } = figures
  const to = reader === 'b'
  const work =
    hours === undefined
      ? ''
      : ` Of the planned work, ${hours.share} h are ${to ? 'your share' : `the share of ${b}`}; ${to ? 'you do' : 'it does'} ${hours.does} h ${to ? 'yourselves' : 'itself'}. ${hoursInMoneyWords}`
  return `As the plan stands, and if all goes by it, ${to ? 'you are' : `${b} is`} ${means}.${work}`
}

/** What stands in the place of money, for a household that would take part without any. */
export const withoutMoneyWords = {
  hours: (money: string, hours: string | undefined, rate: string) =>
    hours === undefined
      ? `As the plan stands, ${money} of your part is money. Hours that you work count against it at the rate that both of you mark.`
      : `As the plan stands, ${money} of your part is money. At the agreed rate of ${rate} an hour that is ${hours} hours.`,
  nothingLeft: 'As the plan stands, no money is asked of you any more.',
  stock:
    'Things that you have count at what they are worth: posts, mesh, a saw for hire. Say of a cost line that you supply it.',
  one: 'For single items all of it can be asked of one household. Choose that item by item, side by side.',
  proposeOne: (a: string) => `Propose that ${a} bears all of it`,
  limit: (a: string) =>
    `A limit of nothing: the fence then asks nothing of you, hours included, and all of it moves to ${a}. It holds once both households mark it.`,
} as const

/** What "no" means. */
export function noMeans(a: string): readonly string[] {
  return [
    'Nothing binds you, and this notebook asks nothing of you any more.',
    `${capitalised(a)} may still build on its own land. What may stand there, and whether a shared fence can be asked of you all the same, is for the law of your place to say: ask locally.`,
    'You can change your answer at any time, and come back to look.',
  ]
}
