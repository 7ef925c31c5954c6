namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>One plane of a JPEG.</summary>
/// <param name="Id">What scans call it.</param>
/// <param name="Across">Its samples across in a group of blocks, 1 to 4.</param>
/// <param name="Down">Its samples down in a group of blocks, 1 to 4.</param>
/// <param name="Table">Its quantisation table.</param>
internal sealed record JpegComponent(byte Id, int Across, int Down, int Table);
