using System.Text;

namespace SheetPress.Publishing;

/// <summary>
/// One track of a Standard MIDI File (MIDI 1.0, SMF 1.0): messages at ticks, in any order of adding. At one tick notes end first,
/// then come settings and marks, then notes begin.
/// </summary>
internal sealed class MidiTrack
{
    private const int NoteOffRank = 0;
    private const int SettingRank = 1;
    private const int NoteOnRank = 2;

    private readonly List<(long Tick, int Rank, int Sequence, byte[] Data)> _messages = [];

    public void Note(int channel, long start, long end, int key, int velocity)
    {
        if (key is < 0 or > 127) return;
        Add(start, NoteOnRank, [(byte)(0x90 | channel), (byte)key, (byte)Math.Clamp(velocity, 1, 127)]);
        Add(Math.Max(end, start + 1), NoteOffRank, [(byte)(0x80 | channel), (byte)key, 64]);
    }

    /// <summary>Sets the sound of a channel; the program is counted from 1 as General MIDI prints it.</summary>
    public void Program(int channel, long tick, int program) => Add(tick, SettingRank, [(byte)(0xC0 | channel), (byte)(program - 1)]);

    public void Control(int channel, long tick, int controller, int value) => Add(tick, SettingRank, [(byte)(0xB0 | channel), (byte)controller, (byte)value]);

    /// <summary>Moves the pitch wheel: -8192 to 8191, 0 is the middle.</summary>
    public void Wheel(int channel, long tick, int value)
    {
        var raw = Math.Clamp(value + 8192, 0, 16383);
        Add(tick, SettingRank, [(byte)(0xE0 | channel), (byte)(raw & 0x7F), (byte)(raw >> 7)]);
    }

    public void Name(string text) => Text(0, 0x03, text);

    public void Marker(long tick, string text) => Text(tick, 0x06, text);

    public void Tempo(long tick, double quartersPerMinute)
    {
        var microseconds = (int)Math.Clamp(Math.Round(60_000_000 / quartersPerMinute), 1, 0xFFFFFF);
        Add(tick, SettingRank, [0xFF, 0x51, 3, (byte)(microseconds >> 16), (byte)(microseconds >> 8 & 0xFF), (byte)(microseconds & 0xFF)]);
    }

    public void TimeSignature(long tick, int beats, int powerOfUnit, int clocksPerClick) =>
        Add(tick, SettingRank, [0xFF, 0x58, 4, (byte)beats, (byte)powerOfUnit, (byte)clocksPerClick, 8]);

    public void KeySignature(long tick, int fifths, bool minor) =>
        Add(tick, SettingRank, [0xFF, 0x59, 2, unchecked((byte)(sbyte)fifths), (byte)(minor ? 1 : 0)]);

    /// <summary>The chunk of the track, its end at a tick no message lies beyond.</summary>
    public byte[] ToChunk(long end)
    {
        _messages.Sort(static (a, b) => a.Tick != b.Tick ? a.Tick.CompareTo(b.Tick) : a.Rank != b.Rank ? a.Rank - b.Rank : a.Sequence - b.Sequence);
        var body = new List<byte>(_messages.Count * 6);
        var at = 0L;
        foreach (var message in _messages)
        {
            WriteVariable(body, message.Tick - at);
            body.AddRange(message.Data);
            at = message.Tick;
        }
        WriteVariable(body, Math.Max(0, end - at));
        body.AddRange([0xFF, 0x2F, 0]);
        var length = body.Count;
        return [(byte)'M', (byte)'T', (byte)'r', (byte)'k', (byte)(length >> 24), (byte)(length >> 16 & 0xFF), (byte)(length >> 8 & 0xFF), (byte)(length & 0xFF), .. body];
    }

    private void Text(long tick, byte kind, string text)
    {
        // The format asks for plain text; what has a plain form takes it, the rest is UTF-8, as most readers expect.
        var bytes = Encoding.UTF8.GetBytes(text.Replace('♭', 'b').Replace('♯', '#'));
        var data = new List<byte> { 0xFF, kind };
        WriteVariable(data, bytes.Length);
        data.AddRange(bytes);
        Add(tick, SettingRank, [.. data]);
    }

    private void Add(long tick, int rank, byte[] data) => _messages.Add((tick, rank, _messages.Count, data));

    // Seven bits a byte, most significant first, the top bit set on all but the last.
    private static void WriteVariable(List<byte> into, long value)
    {
        for (var shift = 28; shift > 0; shift -= 7)
        {
            if (value >> shift != 0) into.Add((byte)(0x80 | (value >> shift & 0x7F)));
        }
        into.Add((byte)(value & 0x7F));
    }
}
