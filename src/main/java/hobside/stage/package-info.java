/**
 * The demonstration on its stage: tasks on hands, voice, hobs and oven, the running order that fits the slot, and what must be done
 * ahead. {@code order} solves the scheduling problem and knows nothing of kitchens. Pure values: no clock, no disk.
 */
package hobside.stage;
