/** How switches stand: by the file, the line-up of a power, a line-up, and one by one on top of it. */

/** What a power, a line-up and single switches make together: position of each switch by its name. */
export function standing(system, power, lineUp, sets = {}) {
  const stands = Object.fromEntries(system.switches.map((one) => [one.name, one.sits]));
  const take = (name) => Object.assign(stands, system.lineUps?.find((one) => one.name === name)?.positions);
  take('usual');
  const own = system.powers.find((one) => one.name === power)?.lineUp;
  [own, lineUp].filter((name) => name && name !== 'usual').forEach(take);
  return Object.assign(stands, sets);
}

/** Whether two ways to stand are the same. */
export function standsAlike(one, other) {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...names].every((name) => one[name] === other[name]);
}
