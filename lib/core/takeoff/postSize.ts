import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../amounts/length.ts'
import type { BuildUp, FootingSpec, Member, PostSpec, SpecialPost } from './buildUp.ts'
import { larger } from './exact.ts'
import { lengthOrNothing } from './neededLength.ts'
import type { Post } from './postLayout.ts'
import { type PostKind, specialName } from './runEdges.ts'

/** What a post is made of and stands in, after what its kind says has gone before what every post says. */
export type PostSize = {
  readonly member: Member
  readonly outside: Millimetres
  /** Zero: no hole. */
  readonly hole: Millimetres
  readonly depth: Millimetres
  readonly gravel: Millimetres
  readonly bracing: string
  readonly footing: FootingSpec
  readonly top: PostSpec['top']
  readonly deduction: string
  /** Outside of the rails that meet the post's top; zero where there are none. */
  readonly rail: Millimetres
  /** Where the size is typed; a special post's own key where it says one. */
  readonly path: string
}

/** The size of every post; a post that several sections or a gate share is the stoutest of them, in the deepest hole. */
export function postSizes(notebook: Notebook, posts: readonly Post[]): readonly PostSize[] {
  const known = new Map<string, PostSize>()
  return posts.map((post) => {
    const key = `${post.kind} ${post.braces ?? ''} ${post.sections.join()} ${post.gates.join()}`
    const size = known.get(key) ?? stoutest(candidates(notebook, post))
    known.set(key, size)
    return size
  })
}

function stoutest(sizes: readonly PostSize[]): PostSize {
  const first = sizes[0] ?? sizeFrom(noPosts, undefined, noFooting, '')
  return sizes.slice(1).reduce((best, next) => {
    const stouter = compareLengths(next.outside, best.outside) > 0 ? next : best
    return { ...stouter, hole: larger(best.hole, next.hole), depth: larger(best.depth, next.depth) }
  }, first)
}

function candidates(notebook: Notebook, post: Post): readonly PostSize[] {
  const kind = post.braces ?? post.kind
  const around = post.sections.flatMap((section) => {
    const buildUp = notebook.sections[section]?.buildUp
    return buildUp === undefined ? [] : [{ buildUp, path: `sections[${section}].buildUp` }]
  })
  const ofGates = post.gates.flatMap((gate) => {
    const buildUp = notebook.gates[gate]?.buildUp
    if (buildUp === undefined) return []
    const beside = around[0]
    const section = beside ? sectionSize(beside.buildUp, 'gate', beside.path) : undefined
    const footing = buildUp.footing.fill === '' ? (section?.footing ?? buildUp.footing) : buildUp.footing
    const base = section
      ? { ...(beside?.buildUp.posts ?? noPosts), ...section.member, ...typedHole(beside?.buildUp) }
      : noPosts
    return [
      {
        ...sizeFrom(base, buildUp.posts, footing, `gates[${gate}].buildUp.posts`, beside?.buildUp),
        bracing: buildUp.posts?.bracing || (section?.bracing ?? ''),
      },
    ]
  })
  return ofGates.length > 0 ? ofGates : around.map(({ buildUp, path }) => sectionSize(buildUp, kind, path))
}

/** Hole of the section's gate posts as typed, for a gate whose own posts do not say one. */
function typedHole(buildUp: BuildUp | undefined): Pick<PostSpec, 'hole' | 'depth' | 'gravel'> {
  const [posts, gate] = [buildUp?.posts, buildUp?.gatePosts]
  return {
    hole: gate?.hole || posts?.hole || '',
    depth: gate?.depth || posts?.depth || '',
    gravel: gate?.gravel || posts?.gravel || '',
  }
}

function sectionSize(buildUp: BuildUp, kind: PostKind, path: string): PostSize {
  const name = specialName[kind]
  const special = name === undefined ? undefined : buildUp[name]
  const own =
    special !== undefined &&
    [
      special.what,
      special.shape,
      special.outside,
      special.wall,
      special.material,
      special.hole,
      special.depth,
    ].some((typed) => typed !== '')
  return sizeFrom(buildUp.posts, special, buildUp.footing, `${path}.${own ? name : 'posts'}`, buildUp)
}

function sizeFrom(
  posts: PostSpec,
  special: SpecialPost | undefined,
  footing: FootingSpec,
  path: string,
  buildUp?: BuildUp,
): PostSize {
  const { what, shape, outside, thickness, wall, stock, material, density, kerf, waste, reclaimed } = posts
  // A post of another material has a shape and a wall of its own: a timber post in a steel fence is solid.
  const other = special !== undefined && special.material !== '' && special.material !== material
  const member: Member = {
    what: special?.what || what,
    shape: special?.shape || shape,
    outside: special?.outside || outside,
    thickness: special?.thickness || (other ? '' : thickness),
    wall: special?.wall || (other ? '' : wall),
    stock: special?.stock || stock,
    material: special?.material || material,
    density: special?.density || (other ? '' : density),
    kerf,
    waste,
    reclaimed,
  }
  const rails = buildUp?.rails
  return {
    member,
    outside: lengthOrNothing(member.outside),
    hole: lengthOrNothing(special?.hole || posts.hole),
    depth: lengthOrNothing(special?.depth || posts.depth),
    gravel: lengthOrNothing(special?.gravel || posts.gravel),
    bracing: special?.bracing ?? '',
    footing,
    top: posts.top,
    deduction: posts.deduction,
    rail:
      rails === undefined || rails.count === '' || Number(rails.count) === 0
        ? lengthOrNothing('')
        : lengthOrNothing(rails.outside),
    path,
  }
}

export const noMember: Member = {
  what: '',
  shape: '',
  outside: '',
  thickness: '',
  wall: '',
  material: '',
  density: '',
  stock: '',
  kerf: '',
  waste: '',
  reclaimed: false,
}

const noPosts: PostSpec = {
  ...noMember,
  hole: '',
  depth: '',
  gravel: '',
  spacing: '',
  layout: '',
  top: '',
  deduction: '',
}

const noFooting: FootingSpec = { fill: '', overbreak: '' }
