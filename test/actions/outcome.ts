/** How a call of an action, a page or a route ended, as Next would take it. */
export type Outcome =
  | { readonly kind: 'not found'; readonly thrown: unknown }
  | { readonly kind: 'redirect'; readonly to: string }
  | { readonly kind: 'answer'; readonly answer: unknown }

/**
 * Runs a call to its end. What Next throws to end a request is told by its digest, as next 16.4.6 spells it; everything
 * else that is thrown would be a broken page, and is thrown on.
 */
export async function outcomeOf(call: () => unknown): Promise<Outcome> {
  try {
    return { kind: 'answer', answer: await call() }
  } catch (thrown) {
    const digest = thrown instanceof Error && 'digest' in thrown ? String(thrown.digest) : ''
    // All of what is thrown is kept, so that two refusals can be told apart wherever they differ.
    if (digest === 'NEXT_HTTP_ERROR_FALLBACK;404')
      return { kind: 'not found', thrown: { ...(thrown as Error), said: String(thrown) } }
    const [name, , to] = digest.split(';')
    if (name === 'NEXT_REDIRECT' && to !== undefined) return { kind: 'redirect', to }
    throw thrown
  }
}

/** The faults of a form's answer, by their paths; throws where the answer is something else. */
export function faultsOf(outcome: Outcome): Record<string, string> {
  if (outcome.kind !== 'answer' || !hasKey(outcome.answer, 'faults'))
    throw new Error(`No faults: ${JSON.stringify(outcome)}`)
  const faults = outcome.answer.faults as readonly { path: string; message: string }[]
  return Object.fromEntries(faults.map(({ path, message }) => [path, message]))
}

/** What a press was refused with; throws where it was not. */
export function refusalOf(outcome: Outcome): string {
  if (outcome.kind !== 'answer' || !hasKey(outcome.answer, 'refused'))
    throw new Error(`No refusal: ${JSON.stringify(outcome)}`)
  return String(outcome.answer.refused)
}

function hasKey<Key extends string>(value: unknown, key: Key): value is Record<Key, unknown> {
  return value !== null && typeof value === 'object' && key in value
}
