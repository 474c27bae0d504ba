/** Keeps what holds every typed word, whatever the capitals and accents; all of it while nothing is typed. */
export function holding<One>(list: readonly One[], typed: string, textOf: (one: One) => string): readonly One[] {
  const wanted = plain(typed).split(/\s+/).filter(Boolean);
  return list.filter((one) => {
    const text = plain(textOf(one));
    return wanted.every((word) => text.includes(word));
  });
}

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
