"use strict";

/**
 * Stands in for @stdlib/assert-has-generator-support, which finds out by evaluating a text: pages with a strict content
 * policy refuse that. Every browser the add-in runs in has generators.
 */
module.exports = function hasGeneratorSupport() {
  return true;
};
