interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL: (address: string) => string }): unknown;
}

/** Under Trusted Types a worker may start only from an address that a policy let through: ours lets through this app's own files, and nothing else. */
export function trustOwnScripts(): void {
  const factory = (window as { trustedTypes?: PolicyFactory }).trustedTypes;
  factory?.createPolicy('default', {
    createScriptURL(address) {
      if (new URL(address, location.href).origin !== location.origin)
        throw new TypeError(`not our own script: ${address}`);
      return address;
    },
  });
}
