using System.Buffers;
using System.Security.Cryptography;

namespace StudioKit.Writing;

/// <summary>SHA-256 of contents (FIPS 180-4), in lower-case hexadecimal digits.</summary>
internal static class ContentHash
{
    /// <summary>Digits of a hash.</summary>
    public const int Length = 64;

    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789abcdef");

    /// <summary>The hash of a file.</summary>
    public static string Of(string path)
    {
        using var stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    /// <summary>Whether a text has such digits only.</summary>
    public static bool IsOfDigits(ReadOnlySpan<char> text) => text.IndexOfAnyExcept(Digits) < 0;
}
