import { PASSWORD_LENGTH } from '@/lib/model/person.ts';
import { PASSWORD_RULES } from '@/lib/words/people.ts';

/** The two fields for a new password, with the rules that it must keep. */
export function NewPassword() {
  return (
    <>
      <p className="soft" id="password-rules">
        {PASSWORD_RULES}
      </p>
      <div className="field">
        <label htmlFor="password">New password</label>
        <input
          id="password"
          name="password"
          type="password"
          autoComplete="new-password"
          aria-describedby="password-rules"
          required
          minLength={PASSWORD_LENGTH.from}
          maxLength={PASSWORD_LENGTH.to}
        />
      </div>
      <div className="field">
        <label htmlFor="password-again">The same once more</label>
        <input
          id="password-again"
          name="again"
          type="password"
          autoComplete="new-password"
          required
          maxLength={PASSWORD_LENGTH.to}
        />
      </div>
    </>
  );
}
