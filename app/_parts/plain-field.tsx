/** One labelled text field of a plain form; what was typed comes back after the page is asked anew. */
export function PlainField({
  name,
  label,
  value,
  placeholder,
}: {
  name: string;
  label: string;
  value: string;
  placeholder?: string;
}) {
  return (
    <div className="field">
      <label htmlFor={`field-${name}`}>{label}</label>
      <input
        key={value}
        id={`field-${name}`}
        name={name}
        defaultValue={value}
        placeholder={placeholder}
        autoComplete="off"
      />
    </div>
  );
}
