import type { RuleExample } from './example'
import type { BeyondExample } from './rule-18-beyond'
import type { SamePair } from './rule-20-same'

interface RuleModule {
  readonly examples?: readonly RuleExample[]
  readonly beyond?: readonly BeyondExample[]
  readonly pairs?: readonly SamePair[]
}

const modules = Object.entries(import.meta.glob<RuleModule>('./rule-*.ts', { eager: true }))
  .map(([path, module]) => ({ rule: /rule-\d+/.exec(path)![0], ...module }))
  .sort((a, b) => (a.rule < b.rule ? -1 : 1))

export const exampleTables = modules.flatMap(({ rule, examples }) =>
  examples ? [{ rule, examples }] : [],
)
export const beyondTables = modules.flatMap(({ rule, beyond }) =>
  beyond ? [{ rule, beyond }] : [],
)
export const pairTables = modules.flatMap(({ rule, pairs }) => (pairs ? [{ rule, pairs }] : []))
