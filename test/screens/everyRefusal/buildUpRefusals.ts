import type { Page } from '@playwright/test'
import { readyBuildUps } from '../../../lib/core/takeoff/readyBuildUps.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { put, trySaving } from '../typing.ts'
import { all, button, documentAt, pressed, rewriting, sending, sends } from './pressing.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { given, meanwhile, withList } from './storeBeside.ts'

type Item = Readonly<Record<string, unknown>>

const [section] = shortNotebook.sections
const wire = readyBuildUps.find(({ key }) => key === 'farm-wire')?.section
const halves = { principle: 'equal' }
const cost = (what: string, unitPrice: string, more: object = {}) => ({
  what,
  quantity: '1',
  unitPrice,
  suppliedBy: 'bought',
  ...more,
})
const basicFence = { infill: 'farm wire', buildUp: wire, materials: [cost('farm wire', '90.00')] }

const first = (change: (section: Item) => Item) =>
  withList<Item>('sections', ([one, ...others]) => [change(one ?? {}), ...others])
const without = (key: string) =>
  first((one) => Object.fromEntries(Object.entries(one).filter(([own]) => own !== key)))
const withNote = first((one) => ({ ...one, notes: 'The willow stays.' }))
const withoutSection = withList('sections', (sections) => sections.slice(1))

const hold = 'Hold the share against it'
const choose = 'Choose this'
const offer = 'Put these among the cost lines'
const offerBasic = 'Put these among its cost lines'
const keep = (page: Page) => trySaving(page, 'Keep this build-up')

/** What the form around a button is about is another item, as it stands now. */
const about = (name: string, id: string) => async (page: Page) => {
  const now = readPart(await documentAt(page), { part: 'item', id })
  await sends(button(page, name), { id, fingerprint: fingerprintOf(now) })
}

/** How a fence is built, what would be enough, how it is shared, and what was tried. */
export const buildUpRefusals: RefusalGroup = {
  about: 'how it is built, what would be enough, and how it is shared',
  notebook: {
    ...shortNotebook,
    contributions: [],
    sections: [
      { ...section, buildUp: wire, basicFence },
      { ...section, id: 's2', name: 'Up the slope' },
    ],
    common: [
      {
        id: 'c1',
        name: 'Auger hire',
        materials: [cost('auger', '90.00')],
        share: { together: halves },
        spread: 'cost',
      },
    ],
    buildUps: [{ name: 'Our wire', household: 'a', section: wire }],
  },
  rows: [
    {
      what: 'a build-up is kept without a name',
      refuses: 'buildUpRefusals.unnamed',
      at: '/build-up/s1',
      press: keep,
      form: 'keep',
      says: 'Needed: a name, such as “Our pipe and mesh”.',
      names: { name: 'a name, such as “Our pipe and mesh”.' },
    },
    {
      what: 'a build-up is kept under a name that is there',
      refuses: 'buildUpRefusals.nameTaken',
      at: '/build-up/s1',
      typed: (page) => put(page, 'name', 'our wire', 'keep'),
      press: keep,
      form: 'keep',
      says: '"our wire" is already the name of another build-up. Choose another name.',
      keeps: [['name', 'our wire']],
      names: 'name',
    },
    {
      what: 'a build-up is kept that was taken out meanwhile',
      refuses: 'buildUpRefusals.nothingToKeep',
      at: '/build-up/s1',
      ...meanwhile(without('buildUp')),
      typed: (page) => put(page, 'name', 'Wire of ours', 'keep'),
      press: keep,
      form: 'keep',
      says: 'Nothing to keep yet: choose a build-up above and save it.',
      keeps: [['name', 'Wire of ours']],
    },
    {
      what: 'the name of a build-up is taken off it',
      refuses: 'buildUpRefusals.unnamed',
      at: '/build-ups',
      typed: (page) => put(page, 'buildUps[0].name', ''),
      press: (page) => trySaving(page, 'Save the build-ups'),
      says: 'Needed: a name, such as “Our pipe and mesh”.',
      names: { 'buildUps[0].name': 'a name, such as “Our pipe and mesh”.' },
    },
    {
      what: 'quantities are put among the lines after their build-up was taken out',
      refuses: 'takeOffRefusals.nothingYet',
      at: '/build-up/s1',
      ...meanwhile(without('buildUp')),
      press: pressed(offer),
      says: 'The take-off has no quantity for this item yet: give it a build-up and its dimensions first.',
    },
    {
      what: 'quantities are put among the lines of a section that was removed meanwhile',
      refuses: 'itemRefusals.removed',
      at: '/build-up/s1',
      ...meanwhile(withoutSection),
      press: pressed(offer),
      says: 'This item was removed in the meantime.',
    },
    {
      what: 'the share is held against the basic fence, and nobody is asked for what is above it',
      refuses: 'holdRefusals.who is asked',
      at: '/basic-fence/s1',
      press: pressed(hold),
      says: 'A share that does not pay the difference yet has nobody for what is above the basic fence. Choose who is asked for that.',
    },
    {
      what: 'the share is held against a basic fence whose credits exceed its cost',
      refuses: 'holdRefusals.below zero',
      at: '/basic-fence/s1',
      ...given(
        first((one) => ({
          ...one,
          basicFence: { ...basicFence, materials: [cost('old rails', '9.00', { credit: true })] },
        })),
      ),
      typed: sending(hold, { above: 'a' }),
      press: pressed(hold),
      says: 'Credits make this sum of the basic fence less than nothing. Take credits off its lines, or hold another pot against it.',
      keeps: [[(page) => page.locator('#hold-above'), 'a']],
    },
    {
      what: 'materials alone are held against it, while the named upgrades are of both pots together',
      refuses: 'holdRefusals.upgrades of both',
      at: '/basic-fence/s1',
      ...given(
        first((one) => ({
          ...one,
          share: {
            together: {
              principle: 'difference',
              basic: '100.00',
              basicShare: halves,
              upgradeShare: halves,
              upgrades: [{ what: 'cedar', amount: '40.00', household: 'b' }],
            },
          },
        })),
      ),
      typed: (page) => page.locator('#hold-materials').check(),
      press: pressed(hold),
      says: 'The upgrades that are named here are of materials and work together. Hold both together against it, or take the upgrades out of the share first.',
    },
    {
      what: 'the share is held against the basic fence of a section that was changed meanwhile',
      refuses: 'basicFenceRefusals.changed',
      at: '/basic-fence/s1',
      ...meanwhile(withNote),
      typed: sending(hold, { above: 'b' }),
      press: pressed(hold),
      says: 'This section was changed since you opened the page. Load the page again, and look at it as it is now.',
      keeps: [[(page) => page.locator('#hold-above'), 'b']],
    },
    {
      what: 'the share is held against the basic fence of a section that was removed meanwhile',
      refuses: 'basicFenceRefusals.removed',
      at: '/basic-fence/s1',
      ...meanwhile(withoutSection),
      typed: sending(hold, { above: 'b' }),
      press: pressed(hold),
      says: 'This section was removed in the meantime.',
    },
    {
      what: 'the share is held against a basic fence that there is none of, where a browser asks all the same',
      refuses: 'basicFenceRefusals.none',
      at: '/basic-fence/s1',
      typed: all(about(hold, 's2'), sending(hold, { above: 'b' })),
      press: pressed(hold),
      says: 'This section has no basic fence yet. Describe it below and save it.',
    },
    {
      what: 'quantities of a basic fence that there is none of, where a browser asks all the same',
      refuses: 'basicFenceRefusals.nothingWorkedOut',
      at: '/basic-fence/s1',
      typed: about(offerBasic, 's2'),
      press: pressed(offerBasic),
      says: 'Nothing can be worked out yet: give the basic fence a build-up, and the section its dimensions, first.',
    },
    {
      what: 'a way to share is chosen for a section that was changed meanwhile',
      refuses: 'wayRefusals.changed',
      at: '/side-by-side/s1',
      ...meanwhile(withNote),
      press: pressed(choose),
      says: 'This item was changed since you opened the page. Load the page again, and look at the figures as they are now.',
    },
    {
      what: 'a section is to be shared by its passages, where a browser asks all the same',
      refuses: 'wayRefusals.notUsable',
      at: '/side-by-side/s1',
      typed: sending(choose, { way: 'use' }),
      press: pressed(choose),
      says: 'This way can’t be used for this item as it stands. Load the page again to see what it lacks.',
    },
    {
      what: 'a way is chosen for a cost that is laid on the others, where a browser asks all the same',
      refuses: 'wayRefusals.laid',
      at: '/side-by-side/s1',
      typed: about(choose, 'c1'),
      press: pressed(choose),
      says: 'Each of them shares its part its own way, so no way is chosen here. To choose one, let the cost be shared by itself.',
    },
    {
      what: 'a way that there is none of',
      refuses: 'pressRefusals.unreadable',
      at: '/side-by-side/s1',
      typed: sending(choose, { way: 'by the moon' }),
      press: pressed(choose),
      says: 'This press could not be read. Load the page again.',
    },
    {
      what: 'what was tried is kept, and is nothing that can be tried',
      refuses: 'tryRefusals.unreadable',
      at: '/try',
      typed: all(rewriting('"prices":"10"', '"price":"10"'), (page) =>
        page.getByLabel('All prices').fill('10'),
      ),
      press: pressed('Keep it as a proposal'),
      says: 'What was tried could not be read. Load the page again; it is still in this browser.',
      keeps: [[(page) => page.getByLabel('All prices'), '10']],
    },
  ],
}
