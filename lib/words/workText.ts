import { sizeWords } from './fileText.ts'

/** What long work says while it goes on. */
export const workWords = {
  stop: 'Stop',
  stopping: 'Stopping\u00a0…',
  lost: 'Not done: the connection was lost. Try again once you are connected.',
  broke: 'Not done: something went wrong on our side. Try again in a while.',
  quarter: (quarters: number) => `${quarters * 25} %`,
  pack: {
    label: 'How much of the record pack is ready',
    begins: 'Looking what belongs to it\u00a0…',
    making: (ready: number, all: number) => `${ready} of ${all} papers and files are ready.`,
    done: (bytes: number) => `The record pack is made, ${sizeWords(bytes)}, and being saved by your browser.`,
    stopped: 'Stopped. Nothing was saved, and the notebook is as it was.',
  },
  paper: {
    making: 'The PDF is being made\u00a0…',
    arriving: (loaded: number, all: number) =>
      `${sizeWords(loaded)} of ${sizeWords(Math.max(all, loaded))} are here\u00a0…`,
    label: 'The PDF is being made',
    done: 'The PDF is made, and being saved by your browser.',
    stopped: 'Stopped. Nothing was saved.',
  },
  check: {
    label: (file: string) => `How far ${file} is`,
    sending: (sent: number, all: number) => `${sizeWords(sent)} of ${sizeWords(all)} sent.`,
    checking: 'All is sent. It is being looked through\u00a0…',
    stopped: 'Stopped. Nothing was found out about it, and nothing of it was kept.',
  },
  import: {
    label: 'How far the notebook file is',
    sending: (sent: number, all: number) => `${sizeWords(sent)} of ${sizeWords(all)} sent.`,
    reading: 'All is sent. It is being read\u00a0…',
    checking: 'It is read. What it says is being checked\u00a0…',
    storing: 'It holds. It is being put in its place\u00a0…',
    stopped: 'Stopped. Nothing was stored, and the file is still chosen.',
  },
} as const

/** Why a notebook file is not taken, besides what is wrong in it. */
export const importRefusals = {
  none: 'Choose a notebook file first.',
  /** What was read is held for two minutes only. */
  gone: 'Nothing was stored: the file was read too long ago. Send it once more.',
  foreign: 'Not sent from a page of this program.',
} as const

/** Why a record is not looked through. */
export const checkRefusals = {
  none: 'Record: choose a PDF file first. Nothing was chosen, or the file is empty.',
  tooLarge: (size: string, most: string) =>
    `Nothing was looked at: the file has ${size}, and at most ${most} are looked through.`,
  busy: 'Others are checking records just now. Nothing was looked at; try again in a minute.',
} as const

/** How many quarters of something are done: what is said aloud, so that it is not said at every percent. */
export function quartersOf(fraction: number): number {
  return Math.min(4, Math.max(0, Math.floor(fraction * 4)))
}
