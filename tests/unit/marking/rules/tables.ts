import type { RuleExample } from './example'

interface RuleModule {
  readonly examples?: readonly RuleExample[]
}

const modules = Object.entries(import.meta.glob<RuleModule>('./rule-*.ts', { eager: true }))
  .map(([path, module]) => ({ rule: /rule-\d+/.exec(path)![0], ...module }))
  .sort((a, b) => (a.rule < b.rule ? -1 : 1))

export const exampleTables = modules.flatMap(({ rule, examples }) =>
  examples ? [{ rule, examples }] : [],
)
