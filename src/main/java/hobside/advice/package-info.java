/** What would help: the changes that make sense for a dish, each weighed beforehand on the plan as it stands. */
package hobside.advice;
