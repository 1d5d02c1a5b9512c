import type { Locator, Page } from '@playwright/test'
import type { AtHome } from '../visiting.ts'

/** Both households at their browsers, in a notebook that the rows of a group share. */
export type Table = { readonly a: AtHome; readonly b: AtHome }

/** A place that holds what was typed: the path of a field in the draft, or whatever a page is looked through for. */
export type Place = string | ((page: Page) => Locator)

/** One refusal as somebody meets it: what is tried, and what then has to be in sight. */
export type RefusalRow = {
  /** What somebody tries, in everyday words. */
  readonly what: string
  /**
   * The refusals that it meets, as `refusalKeys.ts` lists them: `fault.length-form`, `accountRefusals.alone`. What no
   * list holds has no key here, and the row is met all the same.
   */
  readonly refuses: string | readonly string[]
  /** The household that tries it; the first, where none is named. */
  readonly by?: 'a' | 'b'
  /** The page, as what follows the notebook's address, or an address of its own that begins with `http`. */
  readonly at: string | ((table: Table) => string | Promise<string>)
  /** Brings the notebook to the state in which this is refused, before the page is opened. */
  readonly given?: (table: Table) => Promise<unknown>
  /** What happens elsewhere once the page is open; the page then hears nothing of it. */
  readonly meanwhile?: (table: Table) => Promise<unknown>
  /** What is typed, once. */
  readonly typed?: (page: Page) => Promise<unknown>
  /** What is pressed, on the phone and again on the laptop, without anything being typed anew in between. */
  readonly press: (page: Page) => Promise<unknown>
  /** The answer takes the place of the page, so that it is only looked at on the laptop. */
  readonly once?: true
  /** Where the answer stands; by itself the summary of a form or the answer to a press. */
  readonly answer?: (page: Page) => Locator
  /** What the answer says: what is wrong, and what would be right. */
  readonly says: string | readonly string[]
  /** What still has to stand where it was typed. */
  readonly keeps?: readonly (readonly [Place, string])[]
  /**
   * The fields that are named by the refusal, as paths of the draft: marked, described, and led to. One is described by the first
   * words of the answer; several each by the words beside their path.
   */
  readonly names?: string | Readonly<Record<string, string>>
  /** The form whose fields `keeps` and `names` tell, where the page has several; else "field". */
  readonly form?: string
  /** Puts back what `given` or `meanwhile` did, where the rows after this one can't do with it. */
  readonly after?: (table: Table) => Promise<unknown>
}

/** Rows that share a notebook, in this order. */
export type RefusalGroup = {
  readonly about: string
  /** The notebook file that both households have; none where the rows need no notebook. */
  readonly notebook?: object
  /** Nobody has come in as the second household yet. */
  readonly alone?: true
  /** What is done in it once, before the first row. */
  readonly ready?: (table: Table) => Promise<unknown>
  readonly rows: readonly RefusalRow[]
}
