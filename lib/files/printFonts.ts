import { readFileSync } from 'node:fs'

/** The font files that papers are set in: IBM Plex Sans, whole; see `PrintFonts` of `lib/pdf/pdfInput.ts`. */
export type FontFiles = { readonly regular: Uint8Array; readonly semibold: Uint8Array }

const folder = 'node_modules/@expo-google-fonts/ibm-plex-sans'
let read: FontFiles | undefined

/**
 * Reads the fonts once. The program runs from its own folder, so the path is a plain one: nothing for a build to trace
 * or to copy.
 */
export function printFonts(): FontFiles {
  read ??= {
    regular: readFileSync(
      /* turbopackIgnore: true */ `${process.cwd()}/${folder}/400Regular/IBMPlexSans_400Regular.ttf`,
    ),
    semibold: readFileSync(
      /* turbopackIgnore: true */ `${process.cwd()}/${folder}/600SemiBold/IBMPlexSans_600SemiBold.ttf`,
    ),
  }
  return read
}
