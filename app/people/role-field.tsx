import { ROLES, type Role } from '@/lib/model/permissions.ts';
import { roleDuty, roleWords } from '@/lib/words/people.ts';

export function RoleField({ id, value }: { id: string; value: Role }) {
  return (
    <div className="field">
      <label htmlFor={id}>Role</label>
      <select id={id} name="role" defaultValue={value} key={value}>
        {ROLES.map((role) => (
          <option key={role} value={role}>
            {roleWords(role)}: {roleDuty(role)}
          </option>
        ))}
      </select>
    </div>
  );
}
