import type { z } from 'zod'
import type { Fault, FaultFacts, ValueKind } from '../core/faults.ts'
import { wholeFile } from '../core/faults.ts'
import { pathText, valueAt } from './jsonText.ts'
import { shown } from './leaf.ts'

type Issue = z.core.$ZodIssue

/** One zod issue as our fault: ours travel in `params`, the few of zod's own are lists, objects and discriminators. */
export function issueFault(issue: Issue, document: unknown): Fault {
  return { path: pathText(issue.path) || wholeFile, ...facts(issue, valueAt(document, issue.path)) }
}

function facts(issue: Issue, found: unknown): FaultFacts {
  if (issue.code === 'custom' && issue.params?.facts) return issue.params.facts as FaultFacts
  if (issue.code === 'invalid_union' && 'options' in issue) {
    const allowed = (issue.options ?? []).map(String)
    // The principle exists, only not here: `difference` inside `difference`.
    if (found === 'difference' && !allowed.includes('difference')) return { kind: 'difference-nested' }
    return choiceFacts(allowed, found)
  }
  if (issue.code === 'invalid_value') return choiceFacts(issue.values.map(String), found)
  const what = issue.code === 'invalid_type' ? kindOf(issue) : 'object'
  return found === undefined ? { kind: 'needed', what } : { kind: 'not-a', what, found: shown(found) }
}

/** Leaves carry their kind of value as zod's message; lists and objects have zod's own. */
function kindOf(issue: Extract<Issue, { code: 'invalid_type' }>): ValueKind {
  if (issue.expected === 'array') return 'list'
  return issue.expected === 'string' || issue.expected === 'boolean' ? (issue.message as ValueKind) : 'object'
}

function choiceFacts(values: readonly string[], found: unknown): FaultFacts {
  const allowed = values.filter((value) => value !== '')
  if (found === undefined || found === '') return { kind: 'needed', what: 'choice', allowed }
  return { kind: 'not-one-of', found: shown(found), allowed }
}
