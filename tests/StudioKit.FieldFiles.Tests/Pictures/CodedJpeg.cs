using BitMiracle.LibJpeg.Classic;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>JPEGs of every kind that cameras and editors write, made and taken apart by a library that the copies of sequential ones do not go through.</summary>
internal static class CodedJpeg
{
    /// <summary>Writes a picture from a byte a plane of each pixel; the first plane has so many samples across and down to one of the others.</summary>
    public static byte[] Write(
        int width, int height, J_COLOR_SPACE colours, (int Across, int Down) sampling, Func<int, int, byte[]> pixel, int quality = 90, Action<jpeg_compress_struct>? set = null)
    {
        using var stream = new MemoryStream();
        var coder = new jpeg_compress_struct(new jpeg_error_mgr());
        coder.jpeg_stdio_dest(stream);
        (coder.Image_width, coder.Image_height) = (width, height);
        coder.Input_components = pixel(0, 0).Length;
        coder.In_color_space = coder.Input_components switch { 1 => J_COLOR_SPACE.JCS_GRAYSCALE, 3 => J_COLOR_SPACE.JCS_RGB, _ => J_COLOR_SPACE.JCS_CMYK };
        coder.jpeg_set_defaults();
        coder.jpeg_set_colorspace(colours);
        coder.jpeg_set_quality(quality, true);
        (coder.Component_info[0].H_samp_factor, coder.Component_info[0].V_samp_factor) = sampling;
        for (var i = 1; i < coder.Input_components; i++)
        {
            (coder.Component_info[i].H_samp_factor, coder.Component_info[i].V_samp_factor) = i == 3 ? sampling : (1, 1);
        }

        set?.Invoke(coder);
        coder.jpeg_start_compress(true);
        for (var y = 0; y < height; y++)
        {
            coder.jpeg_write_scanlines([[.. Enumerable.Range(0, width).SelectMany(x => pixel(x, y))]], 1);
        }

        coder.jpeg_finish_compress();
        return stream.ToArray();
    }

    /// <summary>All coefficients, plane by plane and block by block, in the library's order.</summary>
    public static List<short[][][]> Coefficients(byte[] jpeg)
    {
        using var stream = new MemoryStream(jpeg);
        var decoder = new jpeg_decompress_struct(new jpeg_error_mgr());
        decoder.jpeg_stdio_src(stream);
        decoder.jpeg_read_header(true);
        var planes = decoder.jpeg_read_coefficients();
        return [.. planes.Take(decoder.Num_components).Select((plane, i) => Blocks(plane, decoder.Comp_info[i].Width_in_blocks, Rows(decoder, i)))];
    }

    /// <summary>Markers and contents of a kind of segment.</summary>
    public static List<byte[]> Segments(byte[] jpeg, params byte[] markers)
    {
        var found = new List<byte[]>();
        for (var at = 2; at + 4 < jpeg.Length && jpeg[at + 1] != 0xDA; at += 2 + ((jpeg[at + 2] << 8) | jpeg[at + 3]))
        {
            if (markers.Contains(jpeg[at + 1]))
            {
                found.Add(jpeg[at..(at + 2 + ((jpeg[at + 2] << 8) | jpeg[at + 3]))]);
            }
        }

        return found;
    }

    // Height over eight, in samples of the plane, rounded up both times (ISO/IEC 10918-1 A.1.1).
    private static int Rows(jpeg_decompress_struct decoder, int plane)
    {
        var most = decoder.Comp_info.Take(decoder.Num_components).Max(component => component.V_samp_factor);
        return (((decoder.Image_height * decoder.Comp_info[plane].V_samp_factor) + most - 1) / most + 7) / 8;
    }

    private static short[][][] Blocks(jvirt_array<JBLOCK> plane, int columns, int rows) =>
        [.. Enumerable.Range(0, rows).Select(row => plane.Access(row, 1)[0].Take(columns)
            .Select(block => Enumerable.Range(0, 64).Select(i => block[i]).ToArray()).ToArray())];
}
