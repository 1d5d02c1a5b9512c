import type { ElementType, Key, ReactElement } from 'react'
import * as react from 'react/jsx-runtime'
import { type Shown, withFiguresBound } from './withFiguresBound.ts'

// The way of all text to a page: the compiler puts this in the place of React's own runtime (`jsxImportSource` in tsconfig.json).

export { Fragment, type JSX } from 'react/jsx-runtime'

export function jsx(type: ElementType, props: Shown, key?: Key): ReactElement {
  return react.jsx(type, withFiguresBound(type, props), key)
}

export function jsxs(type: ElementType, props: Shown, key?: Key): ReactElement {
  return react.jsxs(type, withFiguresBound(type, props), key)
}
