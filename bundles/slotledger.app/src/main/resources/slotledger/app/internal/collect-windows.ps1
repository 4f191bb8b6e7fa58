<#
Writes one small text file about this computer's memory into a folder.

    powershell -ExecutionPolicy Bypass -File collect-windows.ps1 \\server\share\firmware [-Name NAME]

What is written, and what is not, stands in README.txt beside this script. The file is named by NAME, else by the
computer's serial number, else by its name in the network. With an administrator's rights the firmware's own table is
taken, else what Windows tells everybody, which has no empty slots' names.
#>
param(
    [Parameter(Mandatory = $true)] [string] $Folder,
    [string] $Name = ''
)
$ErrorActionPreference = 'Stop'

# What firmware leaves in fields that nobody filled in is no name.
function Test-Usable([string] $Text) {
    return $Text.Trim() -ne '' -and $Text -notmatch '(?i)^(none|unknown|default.*|.*o\.e\.m.*|.*serial.*|not .*|0+|n/a)$'
}

$serial = [string] (Get-CimInstance Win32_BIOS).SerialNumber
if (-not $Name -and (Test-Usable $serial)) { $Name = $serial.Trim() }
if (-not $Name) { $Name = $env:COMPUTERNAME }
$Name = $Name -replace '[^A-Za-z0-9._-]', '_'

New-Item -ItemType Directory -Force -Path $Folder | Out-Null
$part = Join-Path $Folder ".$Name.part"

# Only structures about the system, its board, chassis, processors and memory are kept. A structure is its length in
# the second byte, then texts up to two zero bytes.
function Get-TableLines {
    $data = (Get-CimInstance -Namespace root/wmi -ClassName MSSmBios_RawSMBiosTables).SMBiosData
    $kept = 1, 2, 3, 4, 5, 6, 16, 17, 19, 20, 127
    $lines = @('# Memory table of one computer: SMBIOS structures of types 1-6, 16, 17, 19, 20, as hexadecimal bytes.')
    $at = 0
    while ($at + 4 -le $data.Length) {
        $end = $at + $data[$at + 1]
        if ($data[$at + 1] -lt 4 -or $end + 2 -gt $data.Length) { break }
        while ($end + 1 -lt $data.Length -and -not ($data[$end] -eq 0 -and $data[$end + 1] -eq 0)) { $end++ }
        $end += 2
        if ($kept -contains $data[$at]) {
            $lines += (($data[$at..($end - 1)] | ForEach-Object { $_.ToString('x2') }) -join ' ')
        }
        if ($data[$at] -eq 127) { break }
        $at = $end
    }
    return $lines
}

function Get-Records {
    $records = @(
        Get-CimInstance Win32_ComputerSystem | Select-Object Manufacturer, Model
        Get-CimInstance Win32_ComputerSystemProduct | Select-Object Vendor, Name, Version, IdentifyingNumber
        Get-CimInstance Win32_BaseBoard | Select-Object Manufacturer, Product, Version
        Get-CimInstance Win32_SystemEnclosure | Select-Object SMBIOSAssetTag, SerialNumber
        Get-CimInstance Win32_Processor | Select-Object SocketDesignation, Manufacturer, Name, NumberOfCores
        Get-CimInstance Win32_PhysicalMemoryArray | Select-Object Location, Use, MemoryErrorCorrection,
            MaxCapacity, MaxCapacityEx, MemoryDevices
        Get-CimInstance Win32_PhysicalMemory | Select-Object BankLabel, DeviceLocator, Capacity, FormFactor,
            MemoryType, SMBIOSMemoryType, TypeDetail, Speed, ConfiguredClockSpeed, ConfiguredVoltage, TotalWidth,
            DataWidth, Manufacturer, PartNumber, SerialNumber, Attributes
    )
    return ConvertTo-Json -InputObject $records -Depth 3
}

try {
    $lines = Get-TableLines
    $file = Join-Path $Folder "$Name.txt"
    if ($lines.Count -lt 3) { throw 'The table is empty.' }
} catch {
    $lines = Get-Records
    $file = Join-Path $Folder "$Name.json"
}
[System.IO.File]::WriteAllLines($part, [string[]] $lines)
Move-Item -Force -Path $part -Destination $file
Write-Output $file
