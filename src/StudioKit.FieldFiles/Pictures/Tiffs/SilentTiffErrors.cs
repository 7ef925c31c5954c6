using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Keeps the library from writing to the console; the caller reports in its own words.</summary>
internal sealed class SilentTiffErrors : TiffErrorHandler
{
    private static readonly SilentTiffErrors Instance = new();

    /// <summary>Silences the library for all files from here on.</summary>
    public static void Use() => Tiff.SetErrorHandler(Instance);

    public override void ErrorHandler(Tiff tif, string method, string format, params object[] args)
    {
    }

    public override void ErrorHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
    {
    }

    public override void WarningHandler(Tiff tif, string method, string format, params object[] args)
    {
    }

    public override void WarningHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
    {
    }
}
