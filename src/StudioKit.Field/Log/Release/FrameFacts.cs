namespace StudioKit.Field.Log.Release;

/// <summary>Names of a picture's settings, which are exported as measurements.</summary>
internal static class FrameFacts
{
    public const string ExposureTime = "exposure time";
    public const string FNumber = "f-number";
    public const string IsoSpeed = "ISO speed";
    public const string FocalLength = "focal length";
    public const string PixelSize = "pixel size at the subject";
    public const string Lens = "lens";
    public const string Framing = "framing";
    public const string SetUp = "set-up";
}
