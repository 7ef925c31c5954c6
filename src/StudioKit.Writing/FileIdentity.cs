namespace StudioKit.Writing;

/// <summary>Which file or folder it is, whatever name it goes by.</summary>
/// <param name="Device">Device that holds it; 0 where the platform does not tell.</param>
/// <param name="Number">Its number on the device; 0 where the platform does not tell.</param>
/// <param name="Name">Real name, which stands in where the platform does not tell; else empty.</param>
internal readonly record struct FileIdentity(ulong Device, ulong Number, string Name);
