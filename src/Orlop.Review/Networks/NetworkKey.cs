using System.Buffers;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>A key that is equal for networks of equal content: the SHA-256 of all that the engine reads.</summary>
public static class NetworkKey
{
    /// <summary>The key of a network, as hexadecimal text.</summary>
    public static string Of(Network network)
    {
        ArrayBufferWriter<byte> content = new(16_384);
        Begin(content, 'c', network.Conductors.Length);
        foreach (Conductor item in network.Conductors)
        {
            Put(content, item.Id, item.A, item.B);
            Put(content, item.ResistanceAt20Ohm, item.Heating is null ? 0 : 1);
            if (item.Heating is { } heating)
            {
                Put(content, heating.AmbientC, heating.RatedC, heating.TableAmbientC, heating.RatedCurrentA);
            }
        }

        Begin(content, 'k', network.Contacts.Length);
        foreach (Contact item in network.Contacts)
        {
            Put(content, item.Id, item.A, item.B);
            Put(content, item.ResistanceOhm);
        }

        Begin(content, 'b', network.Batteries.Length);
        foreach (Battery item in network.Batteries)
        {
            Put(content, item.Id, item.Plus, item.Minus);
            Put(content, item.OpenCircuitV, item.InternalOhm);
        }

        Begin(content, 's', network.LimitedSources.Length);
        foreach (LimitedSource item in network.LimitedSources)
        {
            Put(content, item.Id, item.Plus, item.Minus);
            Put(content, item.SetpointV, item.LimitA, item.SourceOhm);
        }

        Begin(content, 'v', network.Converters.Length);
        foreach (Converter item in network.Converters)
        {
            Put(content, item.Id, item.InPlus, item.InMinus, item.OutPlus, item.OutMinus);
            Put(content, item.OutputV, item.OutputOhm, item.IdleW, item.ProportionalLossFraction, item.OhmicLossPerW, item.RatedW, item.LeastInputV, item.IsSharedMinus ? 1 : 0);
        }

        Begin(content, 'l', network.Loads.Length);
        foreach (Load item in network.Loads)
        {
            Put(content, item.Id, item.Plus, item.Minus);
            Put(content, (double)item.Kind, item.Amount, item.LeastV);
        }

        Begin(content, 'n', network.BondedNodes.Length);
        foreach (string node in network.BondedNodes)
        {
            Put(content, node);
        }

        return Convert.ToHexString(SHA256.HashData(content.WrittenSpan));
    }

    private static void Begin(ArrayBufferWriter<byte> content, char part, int count) => Put(content, (double)part, count);

    private static void Put(ArrayBufferWriter<byte> content, params ReadOnlySpan<double> numbers) =>
        content.Write(MemoryMarshal.AsBytes(numbers));

    private static void Put(ArrayBufferWriter<byte> content, params ReadOnlySpan<string> texts)
    {
        foreach (string text in texts)
        {
            int length = Encoding.UTF8.GetByteCount(text);
            Put(content, (double)length);
            Encoding.UTF8.GetBytes(text, content.GetSpan(length));
            content.Advance(length);
        }
    }
}
