// Node 20 lacks Object.groupBy, which the parser generator calls; newer Nodes keep their own.
Object.groupBy ??= (items, keyOf) => {
  const groups = Object.create(null);
  let index = 0;
  for (const item of items) {
    const key = keyOf(item, index++);
    groups[key] ??= [];
    groups[key].push(item);
  }
  return groups;
};
