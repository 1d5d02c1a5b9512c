/**
 * Everything that can be wrong with a notebook file and that a person can mend: a path to the field and the facts.
 * The sentence that says what would be right is made of these facts in one place, `lib/words/faultText.ts`.
 *
 * A path reads like the file: `sections[0].share.materials.b`; a fault of the whole file has the path `(file)`.
 */
export type Fault = { readonly path: string } & FaultFacts

export const wholeFile = '(file)'

export type FaultFacts =
  // the file itself
  | { readonly kind: 'not-json'; readonly detail: string }
  /** Where the text can't be read on, counted from 1; `found` is the character there, empty at the end of the text. */
  | { readonly kind: 'json-breaks'; readonly line: number; readonly column: number; readonly found: string }
  | { readonly kind: 'unreadable'; readonly detail: string }
  | { readonly kind: 'too-large'; readonly bytes: number; readonly limit: number }
  | { readonly kind: 'too-deep'; readonly limit: number }
  | { readonly kind: 'wrong-format'; readonly found: string }
  | { readonly kind: 'wrong-version'; readonly found: string }
  | { readonly kind: 'key-twice'; readonly key: string }
  // the shape of a value
  | { readonly kind: 'needed'; readonly what: ValueKind; readonly allowed?: readonly string[] }
  | { readonly kind: 'not-a'; readonly what: ValueKind; readonly found: string }
  | { readonly kind: 'not-one-of'; readonly found: string; readonly allowed: readonly string[] }
  | { readonly kind: 'number-form'; readonly found: string; readonly fractionDigits: number }
  | {
      readonly kind: 'money-digits'
      readonly found: string
      readonly currency: string
      readonly digits: number
    }
  | { readonly kind: 'percent-range'; readonly found: string }
  | { readonly kind: 'length-form'; readonly found: string; readonly mayBeNegative: boolean }
  | { readonly kind: 'length-negative'; readonly found: string }
  | { readonly kind: 'date-form'; readonly found: string; readonly mayBeEmpty: boolean }
  | { readonly kind: 'currency-unknown'; readonly found: string }
  | { readonly kind: 'currency-fixed'; readonly currency: string }
  // ids
  | { readonly kind: 'id-twice'; readonly id: string }
  | { readonly kind: 'id-unknown'; readonly id: string; readonly known: readonly string[] }
  // shares
  | { readonly kind: 'percent-pair'; readonly a: string; readonly b: string; readonly sum: string }
  | { readonly kind: 'difference-nested' }
  | { readonly kind: 'use-off-gate' }
  | { readonly kind: 'share-both-forms' }
  | { readonly kind: 'weights-zero'; readonly principle: 'length' | 'use' | 'benefit' }
  | { readonly kind: 'saving-dearer'; readonly pot: string; readonly alone: string; readonly over: string }
  | {
      readonly kind: 'saving-outside'
      readonly household: 'a' | 'b'
      readonly share: string
      readonly pot: string
    }
  | { readonly kind: 'pot-below-zero'; readonly below: string }
  // a common cost that is to be laid on sections and gates: `on` names those that can't be shared yet
  | { readonly kind: 'spread-waits'; readonly on: readonly string[] }
  | { readonly kind: 'spread-nowhere' }
  | { readonly kind: 'gift-hired' }
  // the lines that an entry in the book was for, against its amount
  | {
      readonly kind: 'lines-above-amount'
      readonly amount: string
      readonly sum: string
      readonly excess: string
    }
  | {
      readonly kind: 'caps-short'
      readonly a: string
      readonly b: string
      readonly total: string
      readonly short: string
    }
  // arrangements
  | {
      readonly kind: 'instalments-sum'
      readonly total: string
      readonly sum: string
      readonly difference: string
      /** The parts come to more than the total, or to less. */
      readonly way: 'more' | 'less'
    }
  | { readonly kind: 'instalments-order'; readonly on: string; readonly before: string }

/** What kind of value a field holds, for the sentence. */
export type ValueKind =
  | 'text'
  | 'number'
  | 'money'
  | 'percent'
  | 'length'
  | 'date'
  | 'household'
  | 'yes-or-no'
  | 'list'
  | 'object'
  | 'choice'
