// the configuration reads TypeScript sources of the project, which Vite's own loader handles well
process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING ??= "true";
