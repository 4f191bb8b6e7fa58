/** Makes up fleets of any size to measure the planner with: boards, kinds, suppliers and machines are invented. */
package slotledger.bench.fleet;
