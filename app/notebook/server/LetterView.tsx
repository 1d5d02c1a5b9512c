import type { Letter } from '../../../lib/words/letter/letterText.ts'

/** The first letter on screen, as it will read on paper; a browser prints it without the page around it. */
export function LetterView({ letter }: { letter: Letter }) {
  const { title, line, opening, contents, invitation, closing, signed } = letter
  return (
    <article className="summary-text paper-alone">
      <header>
        <h3>{title}</h3>
        <p className="quiet">{line}</p>
      </header>
      <p>{opening}</p>
      {contents.map(({ id, heading, sentences }) => (
        <section key={id}>
          <h4>{heading}</h4>
          {sentences.map((sentence, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two paragraphs may be the same, and none moves
            <p key={index}>{sentence}</p>
          ))}
        </section>
      ))}
      <section>
        <h4>{invitation.heading}</h4>
        <p>{invitation.words}</p>
      </section>
      <p>{closing}</p>
      <p>{signed}</p>
    </article>
  )
}
