/** Which kept work a tab has open: this tab's own on reload, otherwise the one that was open last. */
const KEY = 'seamwright work';

export function rememberCurrent(id: string): void {
  for (const storage of storages()) storage.setItem(KEY, id);
}

export function recallCurrent(): string | null {
  for (const storage of storages()) {
    const id = storage.getItem(KEY);
    if (id !== null) return id;
  }
  return null;
}

/** Reading these properties throws where storage is switched off. */
function storages(): readonly Storage[] {
  try {
    return [sessionStorage, localStorage];
  } catch {
    return [];
  }
}
