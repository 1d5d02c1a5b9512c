/** What a drawing of the line could not show, or only in part. Places are indices into the notebook's lists. */
export type DrawingNote =
  | { readonly kind: 'nothing-to-draw' }
  | { readonly kind: 'station-without-place'; readonly station: number }
  | { readonly kind: 'section-without-place'; readonly section: number }
  | { readonly kind: 'section-backwards'; readonly section: number }
  | { readonly kind: 'section-past-the-end'; readonly section: number }
  | { readonly kind: 'sections-overlap'; readonly section: number; readonly other: number }
  | { readonly kind: 'section-without-height'; readonly section: number }
  | { readonly kind: 'gate-without-place'; readonly gate: number }
  | { readonly kind: 'gate-without-opening'; readonly gate: number }
  | { readonly kind: 'gate-past-the-end'; readonly gate: number }
  | { readonly kind: 'gate-outside-sections'; readonly gate: number }
  | { readonly kind: 'gates-overlap'; readonly gate: number; readonly other: number }
  | { readonly kind: 'swing-unknown'; readonly gate: number }
  | { readonly kind: 'setbacks-unknown' }
  /** What is drawn reaches past the stations that say it. */
  | { readonly kind: 'setbacks-past' }
  | { readonly kind: 'grades-unknown' }
  | { readonly kind: 'grades-past' }
