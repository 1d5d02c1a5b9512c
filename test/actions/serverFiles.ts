import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'

const project = path.join(import.meta.dirname, '../..')

function sources(folder: string): string[] {
  return readdirSync(path.join(project, folder), { withFileTypes: true }).flatMap((entry) => {
    const name = `${folder}/${entry.name}`
    if (entry.isDirectory()) return sources(name)
    return /\.(ts|tsx|js|jsx|mjs)$/.test(entry.name) ? [name] : []
  })
}

const marked = /^\s*(['"])use server\1/m

/** Files of app and lib in which `'use server'` stands anywhere, and whether it stands at the top, for the whole file. */
export function serverActionFiles(): { readonly name: string; readonly whole: boolean }[] {
  return ['app', 'lib'].flatMap(sources).flatMap((name) => {
    const text = readFileSync(path.join(project, name), 'utf8')
    return marked.test(text) ? [{ name, whole: /^(['"])use server\1/.test(text) }] : []
  })
}

/** Files that answer a request for an address: pages and route handlers. */
export function addressFiles(): string[] {
  return sources('app').filter((name) => /\/(page|route)\.(ts|tsx|js|jsx)$/.test(name))
}

export type AnyFunction = (...values: unknown[]) => unknown

/** What a file exports, by name. */
export async function exportsOf(name: string): Promise<Record<string, unknown>> {
  return (await import(path.join(project, name))) as Record<string, unknown>
}

/** Every function that a browser can call: `file#name` and the function. */
export async function everyAction(): Promise<Map<string, AnyFunction>> {
  const actions = new Map<string, AnyFunction>()
  for (const { name } of serverActionFiles()) {
    for (const [exported, value] of Object.entries(await exportsOf(name))) {
      actions.set(`${name}#${exported}`, value as AnyFunction)
    }
  }
  return actions
}

/** Every function that answers an address: a page's own, or one for each method of a route handler. */
export async function everyAddress(): Promise<Map<string, AnyFunction>> {
  const methods = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS', 'default']
  const addresses = new Map<string, AnyFunction>()
  for (const name of addressFiles()) {
    for (const [exported, value] of Object.entries(await exportsOf(name))) {
      if (methods.includes(exported)) addresses.set(`${name}#${exported}`, value as AnyFunction)
    }
  }
  return addresses
}
