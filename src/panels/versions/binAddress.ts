/** Address of the screen of versions with the bin in front. */
export const BIN_ADDRESS = "#bin";
