'use client';

import { useEffect, useId, useState } from 'react';
import type { Suggestion } from '@/app/api/suggestions/route.ts';

/** How long typing must rest before suggestions are asked for. */
const REST_MS = 150;

/** An id to type, with suggestions as one types; without scripts a plain field. */
export function SuggestField({
  of,
  label,
  hint,
  typed,
  fault,
}: {
  of: 'location' | 'load';
  label: string;
  hint: string;
  typed: string;
  fault: string | null;
}) {
  const id = useId();
  const [text, setText] = useState(typed);
  const [suggestions, setSuggestions] = useState<readonly Suggestion[]>([]);
  useEffect(() => {
    if (text.trim() === '') {
      setSuggestions([]);
      return;
    }
    const asked = new AbortController();
    const rest = setTimeout(() => {
      fetch(`/api/suggestions?${new URLSearchParams({ of, find: text })}`, { signal: asked.signal })
        .then((response) => (response.ok ? response.json() : []))
        .then((found: readonly Suggestion[]) => setSuggestions(found))
        .catch(() => undefined); // suggestions are a help, not a need: without them the field still asks
    }, REST_MS);
    return () => {
      clearTimeout(rest);
      asked.abort();
    };
  }, [of, text]);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        name={of}
        list={`${id}-list`}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        value={text}
        onChange={(event) => setText(event.target.value)}
        aria-invalid={fault !== null}
        aria-describedby={`${id}-hint${fault === null ? '' : ` ${id}-fault`}`}
      />
      <datalist id={`${id}-list`}>
        {suggestions.map((suggestion) => (
          <option key={suggestion.id} value={suggestion.id}>
            {suggestion.name}
          </option>
        ))}
      </datalist>
      {fault === null ? null : (
        <span id={`${id}-fault`} className="fault">
          {fault}
        </span>
      )}
      <span id={`${id}-hint`} className="soft dense">
        {hint}
      </span>
    </div>
  );
}
