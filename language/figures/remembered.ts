/** Works a thing out when it is first asked for and remembers the answer. */

/** The same function, asked once for each thing. */
export function remembered<K, V>(compute: (of: K) => V): (of: K) => V {
  const answers = new Map<K, { readonly answer: V }>();
  return (of) => {
    const known = answers.get(of) ?? { answer: compute(of) };
    answers.set(of, known);
    return known.answer;
  };
}

export function once<V>(compute: () => V): () => V {
  let known: { readonly answer: V } | undefined;
  return () => {
    known ??= { answer: compute() };
    return known.answer;
  };
}
