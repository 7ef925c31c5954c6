namespace StudioKit.FieldFiles.Plates;

/// <summary>A portrait made ready for print.</summary>
/// <param name="Jpeg">A JPEG file.</param>
/// <param name="HasBar">Whether a scale bar was found in the picture.</param>
public sealed record PlatePrint(byte[] Jpeg, bool HasBar);
