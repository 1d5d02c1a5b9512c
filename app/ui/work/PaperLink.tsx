'use client'

import { workWords } from '../../../lib/words/workText.ts'
import type { ButtonWeight } from '../ButtonLink.tsx'
import { LinkAtWork } from './LinkAtWork.tsx'
import { usePaper } from './usePaper.ts'

/**
 * A link to a PDF that is made when it is asked for. Where that takes a while, it says so and can be stopped; then the
 * PDF is saved. Without script the link itself saves it.
 */
export function PaperLink({
  href,
  weight,
  children,
}: {
  href: string
  weight?: ButtonWeight | undefined
  children: string
}) {
  const { progress, said, make, stop } = usePaper((signal) => fetch(href, { signal }))
  return (
    <LinkAtWork
      href={href}
      weight={weight}
      label={workWords.paper.label}
      progress={progress}
      said={said}
      onPress={make}
      onStop={stop}
    >
      {children}
    </LinkAtWork>
  )
}
