import type { Block } from '../summary/block.ts'

/** What a sheet holds: content as in the summary, and room to be written in by hand. */
export type SheetBlock = Block | RoomBlock

/** Ruled lines under a word that says what belongs there. */
export type RoomBlock = { readonly kind: 'room'; readonly title: string; readonly lines: number }
