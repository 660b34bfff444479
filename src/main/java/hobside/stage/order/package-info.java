/**
 * Who does what when, on hands, hobs and an oven that can only do so much at once: the shortest running order, proven where it can
 * be. Knows jobs and resources only, nothing of a kitchen; no disk, clock, thread or chance without a seed.
 *
 * <p>The problem is the resource-constrained project scheduling problem with release times and deadlines; see {@link
 * hobside.stage.order.Scheduler} for how it is solved, by two searches in turns, and whose ideas that is.
 */
package hobside.stage.order;
