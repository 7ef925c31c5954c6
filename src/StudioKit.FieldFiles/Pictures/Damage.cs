namespace StudioKit.FieldFiles.Pictures;

/// <summary>What a decoding library makes of a damaged file.</summary>
/// <remarks>
/// The libraries for JPEG and TIFF were carried over from C, where damage that nobody foresaw reads past the end of an array; here that is an exception of
/// the language itself, and so it is in the one for metadata. Around a call of theirs, and nowhere else, those mean a damaged file and no fault of ours.
/// </remarks>
internal static class Damage
{
    public static T Told<T>(Func<T> decode)
    {
        try
        {
            return decode();
        }
        catch (Exception error) when (IsDamage(error))
        {
            throw new InvalidDataException("The picture is damaged.", error);
        }
    }

    public static void Told(Action decode) => Told(() =>
    {
        decode();
        return true;
    });

    /// <summary>Whether an exception of a decoding library means a damaged file.</summary>
    public static bool IsDamage(Exception error) => error is IndexOutOfRangeException or ArgumentException or NullReferenceException or OverflowException
        or InvalidCastException or DivideByZeroException or EndOfStreamException or FormatException or NotImplementedException or InvalidOperationException;
}
