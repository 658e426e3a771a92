/** URL fragment of the versions screen with the bin selected. */
export const BIN_ADDRESS = "#bin";
