import type { Units } from '../core/agreement/notebook.ts'
import { parseLength } from '../core/amounts/length.ts'
import { figuresMeant } from '../core/amounts/typedFigure.ts'
import { roundedFraction } from '../core/amounts/typedFraction.ts'
import { lengthMeant } from '../core/amounts/typedLength.ts'
import { never } from '../core/assert.ts'
import type { FaultFacts, ValueKind } from '../core/faults.ts'
import { dayWords } from './day.ts'
import { tooLargeText } from './tooLargeText.ts'

/** The sentence for one fault: what is wrong and what would be right. The path is shown beside it, not in it. */
export function faultText(fault: FaultFacts): string {
  return faultTextIn(fault, undefined)
}

/** The same of a fault that is of no field but of the whole: nothing came of what was sent. */
export function wholeFaultText(fault: FaultFacts): string {
  return `Nothing was changed. ${faultText(fault)}`
}

/** The same where the notebook's units are known: a length without its unit is offered in them. */
export function faultTextIn(fault: FaultFacts, units: Units | undefined): string {
  switch (fault.kind) {
    case 'not-json':
      return `This is not a notebook file: ${fault.detail}.`
    case 'json-breaks':
      return brokenText(fault)
    case 'unreadable':
      return `The file can't be read: ${fault.detail}.`
    case 'too-large':
      return tooLargeText(fault.bytes, fault.limit)
    case 'too-deep':
      return `Lists and objects lie more than ${fault.limit} deep inside one another; a notebook file never does.`
    case 'wrong-format':
      return `The format is ${quoted(fault.found)}; it has to be "mearing-notebook".`
    case 'wrong-version':
      return `The version is ${quoted(fault.found)}; this program reads version 1, written as the number 1.`
    case 'key-twice':
      return `The key ${quoted(fault.key)} stands twice in the same object; keep one.`
    case 'needed':
      return fault.allowed ? `Needed: one of ${listed(fault.allowed)}.` : `Needed: ${describe[fault.what]}.`
    case 'not-a':
      return `${fault.found} stands here; it has to be ${describe[fault.what]}${quotedKinds.has(fault.what) ? ', in quotation marks' : ''}.`
    case 'not-one-of':
      return `${quoted(fault.found)} is not known here; use one of ${listed(fault.allowed)}.`
    case 'number-form':
      return numberText(fault)
    case 'money-digits':
      return fault.digits === 0
        ? `${quoted(fault.found)} has digits after the point; ${fault.currency} is written in whole units, such as "1200".`
        : `${quoted(fault.found)} has too many digits after the point; ${fault.currency} takes at most ${fault.digits}.`
    case 'percent-range':
      return `${quoted(fault.found)} is more than 100; a percentage lies between 0 and 100.`
    case 'length-form':
      return lengthText(fault, units)
    case 'length-negative':
      return `${quoted(fault.found)} is negative; only ground heights may be. Write it without the minus.`
    case 'date-form':
      return `${quoted(fault.found)} is not a day of the calendar: write year-month-day, such as "2027-04-30"${fault.mayBeEmpty ? ', or leave it empty' : ''}.`
    case 'currency-unknown':
      return `${quoted(fault.found)} is not a currency that ISO 4217 lists as money in use; write its three letters, such as "USD", "EUR" or "JPY".`
    case 'currency-fixed':
      return `The book has entries in ${fault.currency}, so the currency stays ${fault.currency}. Start a new notebook for another one.`
    case 'id-twice':
      return `The id ${quoted(fault.id)} is taken already; sections, gates and common costs each need an id of their own.`
    case 'id-unknown':
      return `No section, gate or common cost has the id ${quoted(fault.id)}; ${fault.known.length === 0 ? 'there are none yet, so leave it out' : `use one of ${listed(fault.known.slice(0, 12))}, or leave it out`}.`
    case 'percent-pair':
      return `${fault.a} and ${fault.b} add to ${fault.sum}; the two percentages have to add to exactly 100.`
    case 'difference-nested':
      return "A difference can't stand inside a difference; choose another principle for this part."
    case 'use-off-gate':
      return 'Only a gate can be shared by use, because only gates have counted passages; choose another principle here.'
    case 'share-both-forms':
      return 'Share either both pots together, or materials and work each; not both ways at once.'
    case 'weights-zero':
      return `There is something to share ${weightWords[fault.principle]}, but both figures are zero; enter a figure above zero for at least one household, or choose another principle.`
    case 'saving-dearer':
      return `Building together (${fault.pot}) costs ${fault.over} more than building alone (${fault.alone} in all), so there is no saving to share; correct the figures for building alone, or choose another principle.`
    case 'saving-outside':
      return `Sharing the saving would ask household ${fault.household} for ${fault.share} of a pot of ${fault.pot}, and nobody can be asked for less than nothing or more than the pot; correct the figures for building alone, or choose another principle.`
    case 'pot-below-zero':
      return `Credits take the pot ${fault.below} below zero; a pot may not be less than nothing. Lower the credits or add the costs they belong to.`
    case 'spread-waits':
      return `This cost is laid on the sections and gates, and some can't be shared yet: ${listed(fault.on)}. Mend that first, or share this cost by itself.`
    case 'spread-nowhere':
      return 'This cost is to be laid on the sections and gates, but there is none yet; add one, or share this cost by itself.'
    case 'lines-above-amount':
      return `The lines add to ${fault.sum}, ${fault.excess} more than the ${fault.amount} of the whole entry. Lower a line, or correct the amount.`
    case 'gift-hired':
      return "Hired work can't be a gift; let it count, or name the household that gives it."
    case 'caps-short':
      return `The caps ${fault.a} and ${fault.b} together fall ${fault.short} short of the total of ${fault.total}; raise one of them or take it away.`
    case 'instalments-sum':
      return `The instalments add to ${fault.sum}, ${fault.difference} ${fault.way} than the total of ${fault.total}; they have to add to exactly the total.`
    case 'instalments-order':
      return `${dayWords(fault.on)} lies before ${dayWords(fault.before)}, the day of the instalment above it; put the instalments in the order of their days.`
    default:
      return never(fault)
  }
}

/** A length that lacks its unit or little else is told as it would be right; any other, how a length is written. */
function lengthText(fault: Extract<FaultFacts, { kind: 'length-form' }>, units: Units | undefined): string {
  if (isBareFigure(fault)) return withoutUnit(fault.found.trim(), units)
  const meant = lengthMeant(fault.found)
  if (meant !== undefined) return `${quoted(fault.found)} can't be read as a length: write ${quoted(meant)}.`
  return `${quoted(fault.found)} can't be read as a length: write a figure with its unit, such as "6 ft", "6' 2-1/2\\"", "1¾ in", "1.83 m" or "45 cm"${fault.mayBeNegative ? ', with a minus in front if it lies below' : ''}; no comma, plus sign or exponent.`.replaceAll(
    '\\"',
    '"',
  )
}

/** What else could be meant, or what it has too much of, where that can be told; else how a number is written. */
function numberText({ found, fractionDigits }: Extract<FaultFacts, { kind: 'number-form' }>): string {
  const rounded = roundedFraction(found, fractionDigits)
  if (rounded !== undefined)
    return `${quoted(found)} comes to no ${fractionDigits === 0 ? 'whole figure' : `exact figure with at most ${fractionDigits} digits after the point`}: write it rounded, such as ${quoted(rounded)}.`
  const begin = `${quoted(found)} can't be read as a number:`
  const meant = figuresMeant(found).map(quoted)
  if (meant.length > 0)
    return `${begin} write ${meant.join(', or ')}${meant.length > 1 ? ', whichever is meant' : ''}.`
  const figures = /^([0-9]+)(?:\.[0-9]*)?…?$/.exec(found)
  if (figures !== null)
    return (figures[1]?.length ?? 0) > 12
      ? `${quoted(found)} has too many digits before the point: write at most 12.`
      : `${quoted(found)} has too many digits after the point: write at most ${fractionDigits}.`
  return /^\s*[-−]\s*[0-9]/.test(found)
    ? `${begin} nothing below zero is taken here, so write it without the minus.`
    : `${begin} write it in figures, such as "14" or "0.385".`
}

/** Where a file can't be read on. The line is named, since a file can be one line or thousands. */
function brokenText({ line, column, found }: Extract<FaultFacts, { kind: 'json-breaks' }>): string {
  const way = 'Bring the file just as it was saved'
  return found === ''
    ? `This is not a notebook file: it ends in line ${line} before it is complete, as if it had been cut off. ${way}.`
    : `This is not a notebook file: it can’t be read on from line ${line}, character ${column}, where ${characterWords(found)} does not fit. ${way}, or mend it there.`
}

/** A character as it can be shown; what leaves no ink, by its number. */
function characterWords(found: string): string {
  return /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(found)
    ? `“${found}”`
    : `the character U+${(found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`
}

const describe: Readonly<Record<ValueKind, string>> = {
  text: 'a text',
  number: 'a number, such as 14 or 0.385',
  money: 'an amount of money, such as 120',
  percent: 'a percentage from 0 to 100, such as 33.3333',
  length: 'a length with its unit, such as 6 ft or 1.83 m',
  date: 'a day written year-month-day, such as 2027-04-30',
  household: '"a" or "b"',
  'yes-or-no': 'true or false',
  list: 'a list',
  object: 'an object',
  choice: 'one of the known words',
}

/** Figures stand in the file as text, so that they read as they were typed. */
const quotedKinds: ReadonlySet<ValueKind> = new Set(['number', 'money', 'percent', 'length', 'date'])

const weightWords: Readonly<Record<'length' | 'use' | 'benefit', string>> = {
  length: 'by length',
  use: 'by use',
  benefit: 'by benefit',
}

/** A figure alone, such as "0" or "5 1/2", that with a unit behind it would be taken. */
function isBareFigure({ found, mayBeNegative }: { found: string; mayBeNegative: boolean }): boolean {
  const size = found.trim()
  return (mayBeNegative || !size.startsWith('-')) && parseLength(`${size} ft`) !== undefined
}

function withoutUnit(size: string, units: Units | undefined): string {
  const offered = {
    'ft-in': `write ${quoted(`${size} ft`)}, or ${quoted(`${size} in`)} where inches are meant`,
    metric: `write ${quoted(`${size} m`)}, or ${quoted(`${size} cm`)} where centimetres are meant`,
    unknown: `write ${quoted(`${size} ft`)}, ${quoted(`${size} in`)}, ${quoted(`${size} m`)} or ${quoted(`${size} cm`)}`,
  }[units ?? 'unknown']
  return `${quoted(size)} has no unit: ${offered}.`
}

function quoted(text: string): string {
  return `"${text}"`
}

function listed(words: readonly string[]): string {
  return words.map(quoted).join(', ')
}
