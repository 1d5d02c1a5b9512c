import type { z } from 'zod'
import type { Fault, FaultFacts } from '../core/faults.ts'
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
    if (found === undefined || found === '') return { kind: 'needed', what: 'choice', allowed }
    // The principle exists, only not here: `difference` inside `difference`.
    if (found === 'difference' && !allowed.includes('difference')) return { kind: 'difference-nested' }
    return { kind: 'not-one-of', found: shown(found), allowed }
  }
  const what = issue.code === 'invalid_type' && issue.expected === 'array' ? 'list' : 'object'
  return found === undefined ? { kind: 'needed', what } : { kind: 'not-a', what, found: shown(found) }
}
