// Finds out from the published schema what may stand where.

export class Schema {
  constructor(text) { this.text = text; }

  // What a reference points to, with what is said beside the reference.
  resolved(rule) {
    if (!rule?.$ref) return rule || {};
    const target = rule.$ref.slice(2).split('/').reduce((part, step) => part[step], this.text);
    return { ...this.resolved(target), ...(rule.description ? { description: rule.description } : {}) };
  }

  // The ways of filling in an object, by the key that each requires.
  ways(rule) {
    return Object.fromEntries((this.resolved(rule).allOf || [])
      .filter(way => way.if?.required && way.then)
      .map(way => [way.if.required[0], this.resolved(way.then)]));
  }

  // The rule for an object that has these keys already.
  chosen(rule, keys) {
    const ways = this.ways(rule);
    const key = Object.keys(ways).find(each => keys.includes(each));
    return key ? ways[key] : this.resolved(rule);
  }

  // The keys that an object may have, with what each means.
  keys(rule, present) {
    const chosen = this.chosen(rule, present);
    const ways = chosen.properties ? {} : this.ways(rule);
    return Object.keys(chosen.properties || {}).length
      ? Object.entries(chosen.properties).filter(([key]) => key !== '$schema').map(([key, each]) => [key, this.resolved(each).description || ''])
      : Object.entries(ways).map(([key, way]) => [key, this.resolved(way.properties[key]).description || '']);
  }

  under(rule, step, keys) {
    const chosen = this.chosen(rule, keys);
    if (typeof step === 'number') return this.resolved(chosen.items);
    const known = chosen.properties?.[step];
    return this.resolved(known || (typeof chosen.additionalProperties === 'object' ? chosen.additionalProperties : {}));
  }

  is(rule, type) { return [].concat(this.resolved(rule).type || []).includes(type); }

  // Whether one name or several may stand there.
  isNames(rule) { return this.is(rule, 'string') && this.is(rule, 'array'); }

  isSide(rule) { return this.is(rule, 'null'); }

  isId(rule) { return this.is(rule, 'string') && Boolean(this.resolved(rule).pattern); }

  words(rule) {
    const resolved = this.resolved(rule);
    if (resolved.enum) return resolved.enum.map(word => JSON.stringify(word));
    if (resolved.const !== undefined) return [JSON.stringify(resolved.const)];
    return this.is(rule, 'boolean') ? (this.isSide(rule) ? ['false'] : ['true', 'false']) : [];
  }
}
