'use client'

import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react'
import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import { statementOf } from '../../../../lib/core/shares/statement.ts'
import type { BuildUp, GateBuildUp } from '../../../../lib/core/takeoff/buildUp.ts'
import { applyTried, type TryingWith, triedItems } from '../../../../lib/core/trying/applyTried.ts'
import { type Influence, influences } from '../../../../lib/core/trying/influences.ts'
import { isTried, nothingTried, type TriedEdit, withEdit } from '../../../../lib/core/trying/tried.ts'
import { quantityText } from '../../../../lib/words/takeoff/quantityText.ts'
import { tryWords } from '../../../../lib/words/tryText.ts'
import { Panel } from '../../../ui/Panel.tsx'
import type { FormNames } from '../partWords.ts'
import { InfluenceList } from './InfluenceList.tsx'
import { KeepAsProposal, type KeepTried } from './KeepAsProposal.tsx'
import { TriedItems } from './TriedItems.tsx'
import { TriedMovesFields } from './TriedMovesFields.tsx'
import { TriedTotals } from './TriedTotals.tsx'
import { useTried } from './useTried.ts'

export type TryOffers = {
  readonly sections: Readonly<Record<string, BuildUp>>
  readonly gates: Readonly<Record<string, GateBuildUp>>
}

/**
 * The plan with every figure movable, beside what each household would then be asked for. All of it is worked out here,
 * in the browser, by the same functions as on the server.
 */
export function TryAChange({
  notebookId,
  plan,
  offers,
  names,
  keep,
}: {
  notebookId: string
  plan: Notebook
  offers: TryOffers
  names: FormNames
  keep: KeepTried
}) {
  const { tried, setTried, leftOut } = useTried(notebookId, plan)
  const using = useMemo<TryingWith>(
    () => ({
      sections: new Map(Object.entries(offers.sections)),
      gates: new Map(Object.entries(offers.gates)),
      nameOf: quantityText,
    }),
    [offers],
  )
  const planned = useMemo(() => statementOf(plan), [plan])
  const notebook = useMemo(() => applyTried(plan, tried, using), [plan, tried, using])
  const statement = useMemo(() => statementOf(notebook), [notebook])
  const changed = useMemo(() => triedItems(plan, notebook), [plan, notebook])
  const onTry = useCallback(
    (edit: TriedEdit, plannedText: string) =>
      setTried((old) => ({ ...old, edits: withEdit(old.edits, edit, plannedText) })),
    [setTried],
  )
  return (
    <>
      <TriedTotals planned={planned} tried={statement} names={names} />
      <Panel heading="Move everything at once">
        <TriedMovesFields
          moves={tried.moves}
          onMove={(kind, text) => setTried((old) => ({ ...old, moves: { ...old.moves, [kind]: text } }))}
        />
      </Panel>
      <Panel heading="Item by item">
        {leftOut ? <p>{tryWords.gone}</p> : null}
        {isTried(tried) ? (
          <button type="button" className="button button-plain" onClick={() => setTried(nothingTried)}>
            {tryWords.putAllBack}
          </button>
        ) : (
          <p>{tryWords.nothing}</p>
        )}
        <TriedItems
          plan={plan}
          edits={tried.edits}
          planned={planned}
          tried={statement}
          using={using}
          names={names}
          onTry={onTry}
        />
      </Panel>
      <Panel heading="What moves a share most">
        <MovesMost notebook={notebook} using={using} names={names} />
      </Panel>
      <KeepAsProposal
        tried={tried}
        changed={changed}
        plan={plan}
        possible={statement.ok}
        keep={keep}
        onKept={() => setTried(nothingTried)}
      />
    </>
  )
}

/** Worked out a moment after the typing stops, so that typing never waits for it. */
function MovesMost({ notebook, using, names }: { notebook: Notebook; using: TryingWith; names: FormNames }) {
  const [household, setHousehold] = useState<'a' | 'b'>('b')
  const calm = useDeferredValue(notebook)
  const [found, setFound] = useState<{ of: Notebook; household: 'a' | 'b'; list: readonly Influence[] }>()
  useEffect(() => {
    const soon = setTimeout(
      () => setFound({ of: calm, household, list: influences(calm, household, using) }),
      400,
    )
    return () => clearTimeout(soon)
  }, [calm, household, using])
  const fresh = found?.of === notebook && found.household === household ? found.list : undefined
  return (
    <>
      <fieldset className="field">
        <legend className="field-label">Whose share</legend>
        <div className="choices choices-beside">
          {(['a', 'b'] as const).map((one) => (
            <div className="choice" key={one}>
              <input
                type="radio"
                name="whose-share"
                id={`whose-share-${one}`}
                checked={household === one}
                onChange={() => setHousehold(one)}
              />
              <label htmlFor={`whose-share-${one}`}>{names[one]}</label>
            </div>
          ))}
        </div>
      </fieldset>
      <p className="quiet">Each figure is varied alone, by a tenth up and down, after caps.</p>
      <InfluenceList notebook={notebook} household={household} influences={fresh} names={names} />
    </>
  )
}
