'use client';

import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';

type Point = { x: number; y: number };
type Listeners = {
  onPan: (by: Point) => void;
  onZoom: (factor: number, at: Point) => void;
  onTap: (at: Point) => void;
  onHover: (at: Point | null) => void;
};

/** A press that moves less than this is a tap: a gloved finger is never quite still. */
const TAP_PX = 9;

/**
 * Pointers on a drawing: one drags, two pinch, a short press taps, a wheel turned sideways (or with Shift) pans and with
 * Ctrl zooms. A plain wheel and an upward drag stay with the page, so that nobody is caught in the drawing.
 */
export function usePointers(box: RefObject<HTMLElement | null>, listeners: Listeners) {
  const down = useRef(new Map<number, Point>());
  const moved = useRef(0);
  const latest = useRef(listeners);
  useEffect(() => {
    latest.current = listeners;
  });

  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const onWheel = (event: WheelEvent) => {
      const at = pointIn(element, event);
      if (event.ctrlKey || event.metaKey) latest.current.onZoom(Math.exp(-event.deltaY / 300), at);
      else if (event.shiftKey || Math.abs(event.deltaX) > Math.abs(event.deltaY))
        latest.current.onPan({ x: -(event.deltaX || event.deltaY), y: 0 });
      else return;
      event.preventDefault();
    };
    // not through React, whose wheel listeners are passive and may not keep the page still
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [box]);

  const at = (event: PointerEvent) => pointIn(event.currentTarget, event);
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      if (down.current.size === 0) moved.current = 0;
      down.current.set(event.pointerId, at(event));
    },
    onPointerMove: (event: PointerEvent) => {
      const before = down.current.get(event.pointerId);
      const now = at(event);
      if (before === undefined) {
        if (event.pointerType === 'mouse') listeners.onHover(now);
        return;
      }
      const by = { x: now.x - before.x, y: now.y - before.y };
      const others = [...down.current].filter(([id]) => id !== event.pointerId).map(([, point]) => point);
      down.current.set(event.pointerId, now);
      moved.current += Math.hypot(by.x, by.y);
      const other = others[0];
      if (other === undefined) {
        if (moved.current > TAP_PX) listeners.onPan(by);
        return;
      }
      moved.current = Number.POSITIVE_INFINITY;
      const factor = distance(now, other) / Math.max(distance(before, other), 1);
      listeners.onZoom(factor, { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 });
    },
    onPointerUp: (event: PointerEvent) => {
      const tapped =
        down.current.delete(event.pointerId) && down.current.size === 0 && moved.current <= TAP_PX;
      if (tapped) listeners.onTap(at(event));
    },
    onPointerCancel: (event: PointerEvent) => {
      down.current.delete(event.pointerId);
    },
    onPointerLeave: () => listeners.onHover(null),
  };
}

function pointIn(element: Element, event: { clientX: number; clientY: number }): Point {
  const { left, top } = element.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

function distance(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
