/** Why the install can't use its own seal. Each is for whoever runs the install to mend; nothing signed is lost. */
export type SealKeyFault =
  /** There was a key before, and it is gone. A new one is never made on the quiet. */
  | { readonly kind: 'missing'; readonly file: string; readonly note: string }
  | { readonly kind: 'unreadable'; readonly file: string; readonly detail: string }
  /** `mode` is the octal mode, such as "644". */
  | { readonly kind: 'open-to-others'; readonly file: string; readonly mode: string }
  /** Not one private key with its certificate. */
  | { readonly kind: 'broken'; readonly file: string; readonly note: string }
  /** A whole key, but not the one that this install sealed with. Both are SHA-256 of a certificate. */
  | {
      readonly kind: 'other-key'
      readonly file: string
      readonly note: string
      readonly expected: string
      readonly found: string
    }
  | { readonly kind: 'expired'; readonly file: string; readonly note: string; readonly since: Date }
  /** A new key could not be written down. */
  | { readonly kind: 'not-kept'; readonly file: string; readonly detail: string }
