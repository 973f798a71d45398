import type * as v from 'valibot'

/** Readonly all the way down, and flat, so that two ways of writing one shape compare as equal. */
type Plain<T> = T extends readonly (infer U)[]
  ? readonly Plain<U>[]
  : T extends object
    ? { readonly [K in keyof T]: Plain<T[K]> }
    : T

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false

/**
 * The schema as it is; a type error where what it reads differs from `Noun` in any field. Assignability alone would
 * let a schema forget an optional field, and reading would then drop it from the record.
 */
export const exactly =
  <Noun>() =>
  <S extends v.GenericSchema>(
    schema: Same<Plain<v.InferOutput<S>>, Plain<Noun>> extends true ? S : never,
  ): S =>
    schema
