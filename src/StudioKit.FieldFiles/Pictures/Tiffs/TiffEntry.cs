namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>One field of a TIFF directory.</summary>
/// <param name="Tag">What it tells.</param>
/// <param name="Kind">How its values are written, by the numbers of TIFF 6.0.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Place">Where the field itself begins.</param>
/// <param name="Values">Where its values begin.</param>
internal readonly record struct TiffEntry(ushort Tag, ushort Kind, long Count, long Place, long Values);
