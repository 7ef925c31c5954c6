namespace StudioKit.Kits.Parts;

/// <summary>A part's file as it lies in the library.</summary>
/// <param name="File">Where it lies, as diagnostics name it.</param>
/// <param name="Bytes">What it holds.</param>
internal sealed record PartText(string File, byte[] Bytes);
