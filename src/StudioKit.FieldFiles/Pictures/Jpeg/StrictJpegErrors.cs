using BitMiracle.LibJpeg.Classic;

namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Makes an exception of our own of whatever the library would warn of on the console and go on with.</summary>
internal sealed class StrictJpegErrors : jpeg_error_mgr
{
    public override void error_exit() => throw new InvalidDataException("The picture is damaged: " + format_message());

    public override void emit_message(int msg_level)
    {
        if (msg_level < 0)
        {
            error_exit();
        }
    }

    public override void output_message()
    {
    }
}
