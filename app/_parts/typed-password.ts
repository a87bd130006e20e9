import { passwordFaults } from '@/lib/model/person.ts';
import { passwordFaultSentence } from '@/lib/words/people.ts';

/** The new password in a form, or what is wrong with it. */
export function typedPassword(
  form: FormData,
  person: { name: string; signInName: string },
): { ok: true; password: string } | { ok: false; faults: string[] } {
  const password = String(form.get('password') ?? '');
  const faults = passwordFaults(password, person).map(passwordFaultSentence);
  if (password !== String(form.get('again') ?? '')) faults.push('The two passwords differ.');
  return faults.length === 0 ? { ok: true, password } : { ok: false, faults };
}
